/** A slot is width × length over all. */
export type Slot = readonly [width: number, length: number];

/** A row of AISC Table J3.3 in the unit of its table. */
export interface AiscHoleRow {
  diameter: number;
  standard: number;
  oversize: number;
  shortSlot: Slot;
  longSlot: Slot;
}

/**
 * Source: AISC 360-22 Table J3.3, inches (from memory). Until the 2010 edition the standard hole for 1 in was
 * 1-1/16.
 */
// prettier-ignore
export const aiscInchRows: readonly AiscHoleRow[] = [
  { diameter: 1 / 2, standard: 9 / 16, oversize: 5 / 8, shortSlot: [9 / 16, 11 / 16], longSlot: [9 / 16, 1 + 1 / 4] },
  { diameter: 5 / 8, standard: 11 / 16, oversize: 13 / 16, shortSlot: [11 / 16, 7 / 8], longSlot: [11 / 16, 1 + 9 / 16] },
  { diameter: 3 / 4, standard: 13 / 16, oversize: 15 / 16, shortSlot: [13 / 16, 1], longSlot: [13 / 16, 1 + 7 / 8] },
  { diameter: 7 / 8, standard: 15 / 16, oversize: 1 + 1 / 16, shortSlot: [15 / 16, 1 + 1 / 8], longSlot: [15 / 16, 2 + 3 / 16] },
  { diameter: 1, standard: 1 + 1 / 8, oversize: 1 + 1 / 4, shortSlot: [1 + 1 / 8, 1 + 5 / 16], longSlot: [1 + 1 / 8, 2 + 1 / 2] },
];

/** From this diameter the inch table gives additions instead of sizes: d + 1/8, d + 5/16, d + 3/8, 2.5 d. */
export const aiscInchAbove = {
  from: 1 + 1 / 8,
  standard: 1 / 8,
  oversize: 5 / 16,
  shortSlot: 3 / 8,
  longSlotFactor: 2.5,
};

/** Source: AISC 360-22 Table J3.3M, mm. Checked against a reprint. */
// prettier-ignore
export const aiscMetricRows: readonly AiscHoleRow[] = [
  { diameter: 16, standard: 18, oversize: 20, shortSlot: [18, 22], longSlot: [18, 40] },
  { diameter: 20, standard: 22, oversize: 24, shortSlot: [22, 26], longSlot: [22, 50] },
  { diameter: 22, standard: 24, oversize: 28, shortSlot: [24, 30], longSlot: [24, 55] },
  { diameter: 24, standard: 27, oversize: 30, shortSlot: [27, 32], longSlot: [27, 60] },
  { diameter: 27, standard: 30, oversize: 35, shortSlot: [30, 37], longSlot: [30, 67] },
  { diameter: 30, standard: 33, oversize: 38, shortSlot: [33, 40], longSlot: [33, 75] },
];

/** From this diameter the metric table gives additions: d + 3, d + 8, d + 10, 2.5 d. */
export const aiscMetricAbove = { from: 36, standard: 3, oversize: 8, shortSlot: 10, longSlotFactor: 2.5 };

/** Source: AISC Design Guide 1, second edition 2006, Table 2.3, inches: holes for anchor rods in base plates. */
export const anchorRodRows: readonly { diameter: number; hole: number }[] = [
  { diameter: 3 / 4, hole: 1 + 5 / 16 },
  { diameter: 7 / 8, hole: 1 + 9 / 16 },
  { diameter: 1, hole: 1 + 13 / 16 },
  { diameter: 1 + 1 / 4, hole: 2 + 1 / 16 },
  { diameter: 1 + 1 / 2, hole: 2 + 5 / 16 },
  { diameter: 1 + 3 / 4, hole: 2 + 3 / 4 },
  { diameter: 2, hole: 3 + 1 / 4 },
  { diameter: 2 + 1 / 2, hole: 3 + 3 / 4 },
];

/**
 * Source: EN 1090-2 Table 11, nominal clearances in mm (checked against a reprint; the oversize hole of M14 from
 * memory). The clearance of a short slot is that of its length; a long slot is 2.5 d long over all. M8 and M10 are not
 * in the table: they have the clearances of M12 by common practice.
 */
export const enClearanceRows: readonly {
  diameter: number;
  normal: number;
  oversize: number;
  shortSlot: number;
}[] = [
  { diameter: 8, normal: 1, oversize: 3, shortSlot: 4 },
  { diameter: 10, normal: 1, oversize: 3, shortSlot: 4 },
  { diameter: 12, normal: 1, oversize: 3, shortSlot: 4 },
  { diameter: 14, normal: 1, oversize: 3, shortSlot: 4 },
  { diameter: 16, normal: 2, oversize: 4, shortSlot: 6 },
  { diameter: 18, normal: 2, oversize: 4, shortSlot: 6 },
  { diameter: 20, normal: 2, oversize: 4, shortSlot: 6 },
  { diameter: 22, normal: 2, oversize: 4, shortSlot: 6 },
  { diameter: 24, normal: 2, oversize: 6, shortSlot: 8 },
  { diameter: 27, normal: 3, oversize: 8, shortSlot: 10 },
  { diameter: 30, normal: 3, oversize: 8, shortSlot: 10 },
  { diameter: 33, normal: 3, oversize: 8, shortSlot: 10 },
  ...[36, 39, 42, 45, 48, 52, 56, 60, 64].map((diameter) => ({
    diameter,
    normal: 3,
    oversize: 8,
    shortSlot: 10,
  })),
];
export const enLongSlotFactor = 2.5;

/** Source: ISO 273, clearance holes, mm (from memory). */
export const isoRows: readonly { diameter: number; fine: number; medium: number; coarse: number }[] = [
  { diameter: 5, fine: 5.3, medium: 5.5, coarse: 5.8 },
  { diameter: 6, fine: 6.4, medium: 6.6, coarse: 7 },
  { diameter: 8, fine: 8.4, medium: 9, coarse: 10 },
  { diameter: 10, fine: 10.5, medium: 11, coarse: 12 },
  { diameter: 12, fine: 13, medium: 13.5, coarse: 14.5 },
  { diameter: 14, fine: 15, medium: 15.5, coarse: 16.5 },
  { diameter: 16, fine: 17, medium: 17.5, coarse: 18.5 },
  { diameter: 18, fine: 19, medium: 20, coarse: 21 },
  { diameter: 20, fine: 21, medium: 22, coarse: 24 },
  { diameter: 22, fine: 23, medium: 24, coarse: 26 },
  { diameter: 24, fine: 25, medium: 26, coarse: 28 },
  { diameter: 27, fine: 28, medium: 30, coarse: 32 },
  { diameter: 30, fine: 31, medium: 33, coarse: 35 },
  { diameter: 33, fine: 34, medium: 36, coarse: 38 },
  { diameter: 36, fine: 37, medium: 39, coarse: 42 },
  { diameter: 39, fine: 40, medium: 42, coarse: 45 },
  { diameter: 42, fine: 43, medium: 45, coarse: 48 },
  { diameter: 45, fine: 46, medium: 48, coarse: 52 },
  { diameter: 48, fine: 50, medium: 52, coarse: 56 },
  { diameter: 52, fine: 54, medium: 56, coarse: 62 },
  { diameter: 56, fine: 58, medium: 62, coarse: 66 },
  { diameter: 60, fine: 62, medium: 66, coarse: 70 },
  { diameter: 64, fine: 66, medium: 70, coarse: 74 },
];
