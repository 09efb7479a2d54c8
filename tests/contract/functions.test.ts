import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { argumentLabel } from '../../src/functions/argument/argument.js';
import { catalog } from '../../src/functions/catalog.js';
import { expectSentence } from '../support/sentence.js';
import type { HostArgument } from '../../src/headless/functions/hostCall.js';
import { bundle, metadata, metadataOf } from './support/built.js';
import { badValues, goodCalls, shopArguments } from './support/calls.js';
import { blankForms, callCell, callCells, type CellCall } from './support/cellCall.js';
import { allowsErrors, carriesDataTypes, OfficialRuntime, type Outcome } from './support/officialRuntime.js';

let runtime: OfficialRuntime;
let stamp: string;
/** What each function answers to its good calls. */
const answers = new Map<string, GoodAnswers>();

interface GoodAnswers {
  plain: unknown;
  otherwise: unknown[];
  blankOptions: unknown[];
  trailingLeftOut: unknown;
}

const names = catalog.map(({ name }) => name);

function goodCall(name: string) {
  const found = goodCalls.find((each) => each.name === name);
  if (!found) throw new Error(`no good call of ${name} is known`);
  return found;
}

/** The runtime gathers results for half a second, so everything is asked at once. */
async function askEverything(): Promise<void> {
  const asked = names.map((name) => {
    const { given, same } = goodCall(name);
    const required = given(stamp);
    const padded: HostArgument[] = metadataOf(name).parameters.map((_, at) => required[at] ?? null);
    const written = same(stamp).map((each): CellCall => ({ name, given: each }));
    const blank = blankForms.map((form): CellCall => ({ name, given: padded, blank: form }));
    return { name, required, written, blank };
  });
  const calls = asked.flatMap(({ name, required, written, blank }) => [
    { name, given: required },
    ...written,
    ...blank,
  ]);
  const short = asked.map(({ name, required }) => ({ id: name, parameters: required as unknown[] }));
  const [outcomes, shortOutcomes] = await Promise.all([callCells(runtime, calls), runtime.callAll(short)]);
  const shown = ({ value, error }: Outcome) => error ?? value;
  asked.forEach(({ name, written, blank }, at) => {
    const own = outcomes.splice(0, 1 + written.length + blank.length).map(shown);
    answers.set(name, {
      plain: own[0],
      otherwise: own.slice(1, 1 + written.length),
      blankOptions: own.slice(1 + written.length),
      trailingLeftOut: shown(shortOutcomes[at] as Outcome),
    });
  });
}

beforeAll(async () => {
  runtime = new OfficialRuntime(bundle);
  stamp = String((await callCell(runtime, 'SHOP', ...shopArguments)).value);
  await askEverything();
});
afterAll(() => runtime.close());

describe('the bundle', () => {
  it('associates every function of the metadata before its script ends, and no other', () => {
    const fresh = new OfficialRuntime(bundle);
    const ids = metadata.functions.map(({ id }) => id);
    expect(ids).toEqual(names);
    expect(new Set(fresh.associated)).toEqual(new Set(ids));
    expect(fresh.associated).toHaveLength(ids.length);
    fresh.close();
  });
});

describe.each(names)('%s', (name) => {
  const answersOf = () => answers.get(name) as GoodAnswers;

  it('gives a value, its options left out', () => {
    const { plain } = answersOf();
    const { value } = goodCall(name);
    expect(plain).not.toHaveProperty('code');
    if (typeof value === 'number') expect(plain).toBeCloseTo(value, 2);
    else expect(JSON.stringify(plain)).toMatch(value);
  });

  it('gives the same for the same input written in other ways', () => {
    const { plain, otherwise } = answersOf();
    expect(otherwise.length).toBeGreaterThan(0);
    for (const other of otherwise) {
      if (typeof plain === 'number') expect(other).toBeCloseTo(plain, 9);
      else expect(other).toEqual(plain);
    }
  });

  it('takes a blank cell, in every form, for an option that is left out', () => {
    const { plain, blankOptions } = answersOf();
    expect(blankOptions).toHaveLength(blankForms.length);
    for (const each of blankOptions) expect(each).toEqual(plain);
  });

  it('is not confused by a host that leaves trailing arguments out altogether', () => {
    const { plain, trailingLeftOut } = answersOf();
    expect(trailingLeftOut).toEqual(plain);
  });
});

describe('a blank cell', () => {
  it('is answered the same in every form, in every argument of every function', async () => {
    const asked = catalog.flatMap(({ name, arguments: all }) =>
      Object.keys(all).map((_, at) => ({ name, at })),
    );
    const calls = asked.flatMap(({ name, at }) => {
      const given: HostArgument[] = [...goodCall(name).given(stamp)];
      while (given.length < at) given.push(undefined);
      given[at] = null;
      return blankForms.map((blank): CellCall => ({ name, given, blank }));
    });
    const outcomes = await callCells(runtime, calls);
    expect(asked.length).toBeGreaterThan(100);
    asked.forEach(({ name, at }, index) => {
      const own = outcomes.slice(index * blankForms.length, (index + 1) * blankForms.length);
      const said = own.map((each) =>
        JSON.stringify(each).replace('0 is read as a blank cell', 'the cell is blank'),
      );
      expect(new Set(said).size, `${name}, argument ${at + 1}: ${said.join('\n')}`).toBe(1);
    });
  });
});

/** Bad input in each argument that reads one value, the others being good. */
const badCalls = catalog.flatMap((descriptor) =>
  Object.entries(descriptor.arguments).flatMap(([argument, { kind, dimensionality, optional }], position) => {
    if (dimensionality === 'matrix') return [];
    const known = badValues[kind];
    if (!known) throw new Error(`no bad input is known for an argument of kind ${kind}`);
    const bads = optional ? known.filter(({ blank }) => !blank) : known;
    return bads.map((bad) => ({ name: descriptor.name, argument, position, bad }));
  }),
);

describe('bad input', () => {
  it('of every argument is refused with one sentence that names it and says what was read and what is allowed', async () => {
    const calls = badCalls.map(({ name, position, bad }): CellCall => {
      const given = goodCall(name).given(stamp);
      while (given.length < position) given.push(undefined);
      return { name, given: [...given.slice(0, position), bad.given, ...given.slice(position + 1)] };
    });
    const outcomes = await callCells(runtime, calls);
    expect(outcomes.length).toBeGreaterThan(150);
    outcomes.forEach((outcome, at) => {
      const { name, argument, bad } = badCalls[at] ?? {};
      const where = `${name} ${argument} ${JSON.stringify(bad?.given)}: ${JSON.stringify(outcome)}`;
      if (!outcome.error) throw new Error(`not refused: ${where}`);
      const { code, message } = outcome.error;
      if (name === 'WORKING') {
        expect(code, where).toBe('#N/A');
        return;
      }
      expect(code, where).toBe(bad?.code);
      expectSentence(message, argumentLabel(argument ?? ''));
      expect(message, where).toMatch(bad?.received ?? /never/);
      expect(message, where).toMatch(/Write|Allowed|Give|Did you mean|Correct|Format|Leave it out|Use /);
    });
  });

  it('in a range is refused with what the range lacks', async () => {
    const table = [
      ['a', 'b'],
      ['c', 'd'],
    ];
    const good = goodCall('ROWCHECK').given(stamp);
    const [noHeadings, noItems, twoRows, noSection] = await callCells(runtime, [
      { name: 'LISTCHECK', given: [table, stamp] },
      { name: 'SHOP', given: [table] },
      { name: 'ROWCHECK', given: [good[0], table, stamp] },
      { name: 'ROWCHECK', given: [[['Mark']], [['C1']], stamp] },
    ]);
    expect(noHeadings?.error).toEqual({
      code: '#VALUE!',
      message:
        'Headings: there is no Section column (read: a, b). Give the row of headings; one must be Section.',
    });
    expect(noItems?.error?.message).toMatch(
      /^Presses: there is no column "Item" in its first row \(read: a, b\)\. Give/,
    );
    expect(twoRows?.error?.message).toMatch(
      /^Row: headings and row must be one row each, .*\(read: 1 × 10 and 2 × 2\)\. Give/,
    );
    expect(noSection?.error?.message).toMatch(/^Headings: there is no Section column \(read: Mark\)\. Give/);
  });

  it('keeps an error inside a range to its own row', async () => {
    const [headings = [], row = []] = (goodCall('LISTCHECK').given(stamp)[0] as string[][]) ?? [];
    const spoiled = row.map((cell, at) => (headings[at] === 'Grade' ? { error: '#REF!' } : cell));
    const outcome = await callCell(runtime, 'LISTCHECK', [headings, spoiled, row], stamp, 'verdict, note');
    const [, bad, good] = outcome.value as string[][];
    expect(bad?.[0]).toBe('Check input');
    expect(bad?.[1]).toContain("'#REF!' is not a known grade");
    expect(good?.[0]).toBe('OK');
  });
});

describe('forms in which hosts send values', () => {
  const error = { type: 'Error', basicType: 'Error', basicValue: '#N/A', errorType: 'NotAvailable' };
  const formatted = {
    type: 'FormattedNumber',
    basicType: 'Double',
    basicValue: 0.375,
    numberFormat: '# ?/?',
  };
  const rich = (value: unknown) => ({ value: JSON.stringify(value) });

  it('reads the number of a formatted number', async () => {
    const outcome = await runtime.call('HOLEMIN', [rich(formatted), 'A36', null], carriesDataTypes);
    expect(outcome.value).toBeCloseTo(0.375, 12);
  });

  it('names the error of an error that comes as a data type', async () => {
    const outcome = await runtime.call(
      'HOLEMIN',
      [rich(error), 'A36', null],
      carriesDataTypes | allowsErrors,
    );
    expect(outcome.error?.message).toBe('Thickness: the cell shows the error #N/A. Correct that cell first.');
  });

  it('takes blank cells inside a range in either form', async () => {
    const part = {
      Section: 'FB 3/8x4',
      Grade: 'A36',
      Length: 12,
      Qty: null,
      Hole: null,
      Edge: null,
      Press: null,
    };
    const given: HostArgument[] = [[Object.keys(part)], [Object.values(part)], stamp];
    const outcomes = await callCells(
      runtime,
      blankForms.map((blank): CellCall => ({ name: 'ROWCHECK', given, blank })),
    );
    const [first, ...others] = outcomes.map(({ value }) => value);
    expect(JSON.stringify(first)).toMatch(/^\[\["OK",.*quantity 1 assumed/);
    for (const other of others) expect(other).toEqual(first);
  });

  it('takes a matrix of one cell for a scalar, and refuses one of several', async () => {
    const one = await runtime.call('HOLEMIN', [[['1/2']], 'A36', null]);
    expect(one.value).toBeCloseTo(0.5, 12);
    const several = await runtime.call('HOLEMIN', [[['1/2', '3/8']], 'A36', null]);
    expect(several.error?.message).toBe('Thickness: a range of 2 cells was given. Give one cell.');
  });

  it('takes one cell for a range', async () => {
    const outcome = await callCell(runtime, 'ROWCHECK', 'Section', 'FB 3/8x4', stamp, 'verdict');
    expect(outcome.value).toEqual([['Check input']]);
  });
});
