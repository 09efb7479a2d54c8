// What a row leaves blank never makes its word better or worse than a filling of it: of a full row and the same row with
// some cells blanked, never one passes where the other fails.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdictKind } from '../../../src/core/check/verdict.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith({
  'Angle shear legs mitered': process.env.LEGS ?? 'one',
  'Angle shear leg position': 'down',
});
const runs = Number(process.env.RUNS ?? 450);

const any = (...values: (number | string)[]) => fc.constantFrom(...values);
const near = any('1/4', '1/2', '13/16', '7/8', '1', '1-1/16', '1-1/8', '1-1/4', '1-1/2', 2, 3, 4);
const lengths = { Length: any(4, 6, 8, 12, 24), 'End kind': any('sheared', 'sawn') };

const holes = fc
  .record({
    Hole: any('9/16', '11/16', '13/16', '13/16x1-1/4', 'rect 1/2x1'),
    Slot: any('along', 'across'),
    Holes: any(1, 2, 3, 4, '1 each end', '2 each end'),
    Bolt: any('1/2', 'none'),
    End: fc.oneof(near, any('right 1', 'right 2')),
    Pitch: any(1, '1-1/4', '1-1/2', 2, 3, 5),
  })
  .map(({ Slot, ...row }): Row => ({ ...row, ...(String(row.Hole).includes('x') ? { Slot } : {}) }));
const more = { 'Hole 2': any('9/16', '13/16'), 'Bolt 2': any('1/2', 'none'), 'End 2': near };

const work = fc.oneof(
  fc.constant({}),
  fc.record({ 'Corner clip': any('1/2', 1, 2), Corners: any(1), 'Clip at': any('bottom left', 'top right') }),
  fc.record({
    'Notch width': any(1, 2),
    'Notch depth': any('1/2', 1),
    'Notch at': any('bottom left', 'top edge 4', 'left end'),
  }),
  fc.record({ 'Bend length': any(3), Bends: any(1), 'Bend at': any('left end 3', 'right end 4') }),
);
const mitersWith = (sides: readonly string[], legs: readonly string[]) =>
  fc.oneof(
    fc.constant({}),
    fc.record({
      'Miter left': any(15, 45),
      'Miter right': any(0, 30),
      'Long side': any(...sides),
      ...(legs.length > 0 ? { 'Miter leg': any(...legs) } : {}),
    }),
  );

const plates = rowsOf(
  holes,
  fc.record({
    ...lengths,
    Section: any('PL3/8X4', 'FB 1/2x6', 'PL1/4X3'),
    Edge: near,
    Gage: any(1, 2, 3),
    'Edge kind': any('rolled', 'sheared'),
  }),
  fc.oneof(fc.constant({}), fc.record({ ...more, 'Edge 2': near })),
  mitersWith(['bottom', 'top'], []),
  work,
);
const angles = rowsOf(
  holes,
  fc.record({
    ...lengths,
    Section: any('L3X3X1/4', 'L4X3X1/4'),
    Gage: any('1-1/4', '1-3/4', 2, '2-1/2'),
    Leg: any('long', 'short'),
  }),
  fc.oneof(fc.constant({}), fc.record({ ...more, 'Gage 2': any('1-3/4', 2), 'Leg 2': any('long', 'short') })),
  mitersWith(['heel', 'toe'], ['long', 'short', 'both']),
);
const channels = rowsOf(
  holes,
  fc.record({ Section: any('C8X11.5'), Length: any(4, 8, 12, 24) }),
  fc.oneof(
    fc.record({ Leg: any('web'), Edge: any(1, 2, 4), Gage: any(2, 3) }),
    fc.record({ Leg: any('flange'), Gage: any(1, '1-3/8', 2) }),
  ),
);

/** Rows with the cells of one of each. */
function rowsOf(...parts: fc.Arbitrary<Row>[]): fc.Arbitrary<Row> {
  return fc.tuple(...parts).map((cells) => withoutLone(Object.assign({}, ...cells) as Row));
}

/** Without a pitch or a gage that would lie between no two holes. */
function withoutLone({ Pitch, Gage, ...row }: Row): Row {
  const together = parseInt(String(row.Holes));
  const isOnPlate = /^(?:PL|FB)/.test(String(row.Section)) || row.Leg === 'web';
  const keepsGage = !isOnPlate || together > 1;
  const keepsPitch = together > (isOnPlate && Gage !== undefined ? 2 : 1);
  return { ...row, ...(keepsPitch ? { Pitch } : {}), ...(keepsGage ? { Gage } : {}) };
}

const blankable = new Set(
  [
    ...['Bolt', 'End', 'Pitch', 'Edge', 'Gage', 'Leg', 'Slot', 'End kind', 'Edge kind', 'Length'],
    ...['Long side', 'Miter leg', 'Clip at', 'Notch at', 'Bend at'],
  ].flatMap((heading) => [heading, `${heading} 2`]),
);

/** A gage on a plate or web makes two lines of holes: without one they stand in one, which is another part. */
const makesLines = (heading: string, { Section }: Row) =>
  heading === 'Gage' && !String(Section).startsWith('L');

function blanked(row: Row, coins: Iterator<boolean>): Row {
  return Object.fromEntries(
    Object.entries(row).map(([heading, cell]) => {
      const isBlank = blankable.has(heading) && !makesLines(heading, row) && coins.next().value === true;
      return [heading, isBlank ? null : cell];
    }),
  );
}

const checked = (row: Row) => checkedRow({ Grade: 'A36', Press: 'Bay A', ...row }, shop);

describe('blank cells', () => {
  it.each([
    ['plates', plates],
    ['angles', angles],
    ['channels', channels],
  ] as const)('of %s neither pass nor fail what a filling would not', (_what, rows) => {
    const met = { passes: 0, fails: 0 };
    fc.assert(
      fc.property(rows, fc.infiniteStream(fc.boolean()), (row, coins) => {
        const left = blanked(row, coins);
        const [full, open] = [checked(row), checked(left)];
        const told = [full, open].map(({ verdict, note }) => `${verdict}: ${note}`).join('\n');
        const about = `${JSON.stringify(row)}\n${JSON.stringify(left)}\n${told}`;
        // Cells that contradict each other are no filling.
        if (full.findings.some(({ rule }) => rule === 'refusal')) return;
        const [whole, rest] = [verdictKind(full.verdict), verdictKind(open.verdict)];
        if (whole === 'fails' || full.verdict === 'Check input') {
          met.fails += 1;
          expect(rest, about).not.toBe('passes');
        }
        if (whole === 'passes') {
          met.passes += 1;
          expect(rest, about).not.toBe('fails');
          expect(open.verdict, about).not.toBe('Check input');
        }
      }),
      { numRuns: runs, seed: 7 },
    );
    expect(Math.min(met.passes, met.fails), JSON.stringify(met)).toBeGreaterThan(runs / 60);
  });
});
