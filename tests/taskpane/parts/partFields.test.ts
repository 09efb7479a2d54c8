import { describe, expect, it } from 'vitest';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { shopWith } from '../../support/sampleShop.js';
import { checkPart } from '../../../src/taskpane/parts/one/checkPart.js';
import { partFields } from '../../../src/taskpane/parts/one/partFields.js';

describe.each(['in', 'mm'] as const)('the inputs of one part in %s', (unit) => {
  const { first, more } = partFields(unit);

  it('are headings that a list has, each once', () => {
    const headings = [...first, ...more].map(({ heading }) => heading);
    const { fields, groups } = readHeadings(headings);
    const read = [fields, ...groups].flatMap((each) => Object.values(each));
    expect(read).toHaveLength(headings.length);
  });
});

it('an example of one part is read whole', () => {
  const part = Object.fromEntries(
    partFields('in').first.map(({ heading, example }) => [heading, example.split(', ')[0] ?? '']),
  );
  const [checked] = checkPart(part, shopWith());
  expect(checked?.result).toMatchObject({ blank: false });
  const findings = checked && !checked.result.blank ? checked.result.findings : [];
  expect(findings.filter(({ rule, outcome }) => rule === 'refusal' || outcome === 'open')).toEqual([]);
});
