import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../../src/core/part/outline.js';
import { edgeKindsOf } from '../../../../src/core/row/layout/edgeKindsOf.js';
import type { HoleGroup } from '../../../../src/core/row/job/rowJob.js';
import { edgeKinds, type EdgeKind } from '../../../../src/core/rule/edgeDistance.js';
import { readAnySection } from '../../../../src/core/section/readAnySection.js';

type Row = Parameters<typeof edgeKindsOf>[0];
const group: HoleGroup = { number: 0, title: 'Hole', hole: { shape: 'round', diameterMm: 18 }, count: 1 };
const origin = { x: 0, y: 0 };

function kinds(
  section: string,
  is: Cause['is'],
  {
    row = {},
    own = {},
    kind = 'sheared',
  }: { row?: Partial<Row>; own?: Partial<HoleGroup>; kind?: EdgeKind | 'none' } = {},
) {
  const read = readAnySection(section, 'Section', 'mm').section;
  return edgeKindsOf(
    { section: read, ...row },
    { ...group, ...own },
    { from: origin, to: origin, cause: { is }, kind },
  );
}

describe('edgeKindsOf', () => {
  it('takes the long edges of a plate and the ends that a press cuts as sheared, and leaves them open', () => {
    for (const is of ['bottom edge', 'top edge', 'left end', 'right end', 'miter left'] as const)
      expect(kinds('PL10x100', is)).toEqual({ taken: 'sheared', possible: edgeKinds });
  });

  it('knows the long edges of bars and shapes as rolled', () => {
    expect(kinds('FB 10x100', 'top edge')).toEqual({ taken: 'rolled', possible: ['rolled'] });
    expect(kinds('L80x80x8', 'toe')).toEqual({ taken: 'rolled', possible: ['rolled'] });
  });

  it('goes by what the shop says its plates are cut from', () => {
    expect(kinds('PL10x100', 'top edge', { row: { stock: 'from bar' } })?.possible).toEqual(['rolled']);
    expect(kinds('PL10x100', 'top edge', { row: { stock: 'from sheet' } })?.possible).toEqual(['sheared']);
  });

  it('goes by what the row says of the group, else of the cut', () => {
    const own = { edgeKind: 'rolled', endKind: 'machine cut' } as const;
    expect(kinds('PL10x100', 'top edge', { own })).toEqual({ taken: 'rolled', possible: ['rolled'] });
    expect(kinds('PL10x100', 'left end', { own })).toEqual({
      taken: 'machine cut',
      possible: ['machine cut'],
    });
    expect(kinds('PL10x100', 'left end', { row: { cutBy: 'saw' } })?.possible).toEqual(['machine cut']);
    // Whoever cuts what is bought to length may shear it.
    expect(kinds('PL10x100', 'left end', { row: { cutBy: 'bought' } })?.possible).toEqual(edgeKinds);
  });

  it('knows the edge of a notch or clip that a press makes, and none at a heel', () => {
    expect(kinds('PL10x100', 'notch')).toEqual({ taken: 'sheared', possible: ['sheared'] });
    expect(kinds('PL10x100', 'clip', { own: { edgeKind: 'rolled' } })?.taken).toBe('sheared');
    expect(kinds('L80x80x8', 'heel', { kind: 'none' })).toBeNull();
  });
});
