/**
 * Root radius r1 by legs, mm: EN 10056-1 (from memory). The toe radius is half of it. 80x80, 50x50, 100x100 and
 * 150x150 are confirmed by the areas the standard prints.
 */
// prettier-ignore
const rows: readonly { legAMm: number; legBMm: number; rootRadiusMm: number }[] = [
  { legAMm: 20, legBMm: 20, rootRadiusMm: 3.5 },
  { legAMm: 25, legBMm: 25, rootRadiusMm: 3.5 },
  { legAMm: 30, legBMm: 30, rootRadiusMm: 5 },
  { legAMm: 35, legBMm: 35, rootRadiusMm: 5 },
  { legAMm: 40, legBMm: 40, rootRadiusMm: 6 },
  { legAMm: 45, legBMm: 45, rootRadiusMm: 7 },
  { legAMm: 50, legBMm: 50, rootRadiusMm: 7 },
  { legAMm: 60, legBMm: 60, rootRadiusMm: 8 },
  { legAMm: 65, legBMm: 65, rootRadiusMm: 9 },
  { legAMm: 70, legBMm: 70, rootRadiusMm: 9 },
  { legAMm: 75, legBMm: 75, rootRadiusMm: 9 },
  { legAMm: 80, legBMm: 80, rootRadiusMm: 10 },
  { legAMm: 90, legBMm: 90, rootRadiusMm: 11 },
  { legAMm: 100, legBMm: 100, rootRadiusMm: 12 },
  { legAMm: 120, legBMm: 120, rootRadiusMm: 13 },
  { legAMm: 130, legBMm: 130, rootRadiusMm: 14 },
  { legAMm: 150, legBMm: 150, rootRadiusMm: 16 },
  { legAMm: 160, legBMm: 160, rootRadiusMm: 17 },
  { legAMm: 180, legBMm: 180, rootRadiusMm: 18 },
  { legAMm: 200, legBMm: 200, rootRadiusMm: 18 },
  { legAMm: 30, legBMm: 20, rootRadiusMm: 4 },
  { legAMm: 40, legBMm: 20, rootRadiusMm: 4 },
  { legAMm: 40, legBMm: 25, rootRadiusMm: 4 },
  { legAMm: 45, legBMm: 30, rootRadiusMm: 4.5 },
  { legAMm: 50, legBMm: 30, rootRadiusMm: 5 },
  { legAMm: 60, legBMm: 30, rootRadiusMm: 5 },
  { legAMm: 60, legBMm: 40, rootRadiusMm: 6 },
  { legAMm: 65, legBMm: 50, rootRadiusMm: 6 },
  { legAMm: 70, legBMm: 50, rootRadiusMm: 7 },
  { legAMm: 75, legBMm: 50, rootRadiusMm: 7 },
  { legAMm: 80, legBMm: 40, rootRadiusMm: 7 },
  { legAMm: 80, legBMm: 60, rootRadiusMm: 8 },
  { legAMm: 100, legBMm: 50, rootRadiusMm: 8 },
  { legAMm: 100, legBMm: 65, rootRadiusMm: 10 },
  { legAMm: 100, legBMm: 75, rootRadiusMm: 10 },
  { legAMm: 120, legBMm: 80, rootRadiusMm: 11 },
  { legAMm: 125, legBMm: 75, rootRadiusMm: 11 },
  { legAMm: 135, legBMm: 65, rootRadiusMm: 11 },
  { legAMm: 150, legBMm: 75, rootRadiusMm: 12 },
  { legAMm: 150, legBMm: 90, rootRadiusMm: 12 },
  { legAMm: 150, legBMm: 100, rootRadiusMm: 12 },
  { legAMm: 200, legBMm: 100, rootRadiusMm: 15 },
  { legAMm: 200, legBMm: 150, rootRadiusMm: 15 },
];

const byLegs = new Map(rows.map((row) => [`${row.legAMm}x${row.legBMm}`, row.rootRadiusMm]));

/** The root radius of a metric angle in mm, longer leg first; undefined for a size that is in no table. */
export function angleRootRadiusMm(legAMm: number, legBMm: number): number | undefined {
  return byLegs.get(`${legAMm}x${legBMm}`);
}
