/** Least edge distance in the unit of its table; above its last row a factor on the diameter. */
export interface EdgeTable {
  source: string;
  rows: readonly { diameter: number; edge: number }[];
  aboveFactor: number;
  /** The one smaller distance some bolts are allowed at the ends of beam connection angles and shear end plates. */
  connectionEnd?: { diameters: readonly number[]; edge: number; note: string };
}

/** Source: AISC 360-22 Table J3.4, inches (checked against a reprint). */
const aiscInch: EdgeTable = {
  source: 'AISC 360-22 Table J3.4',
  rows: [
    { diameter: 1 / 2, edge: 3 / 4 },
    { diameter: 5 / 8, edge: 7 / 8 },
    { diameter: 3 / 4, edge: 1 },
    { diameter: 7 / 8, edge: 1 + 1 / 8 },
    { diameter: 1, edge: 1 + 1 / 4 },
    { diameter: 1 + 1 / 8, edge: 1 + 1 / 2 },
    { diameter: 1 + 1 / 4, edge: 1 + 5 / 8 },
  ],
  aboveFactor: 1.25,
};

/** Source: AISC 360-22 Table J3.4M, mm (checked against a reprint). */
const aiscMetric: EdgeTable = {
  source: 'AISC 360-22 Table J3.4M',
  rows: [
    { diameter: 16, edge: 22 },
    { diameter: 20, edge: 26 },
    { diameter: 22, edge: 28 },
    { diameter: 24, edge: 30 },
    { diameter: 27, edge: 34 },
    { diameter: 30, edge: 38 },
    { diameter: 36, edge: 46 },
  ],
  aboveFactor: 1.25,
};

/** Source: AISC 360-05 Table J3.4, at sheared edges, inches (checked against a reprint); withdrawn in 2010. */
const shearedInch: EdgeTable = {
  source: 'AISC 360-05 Table J3.4, at sheared edges (edition withdrawn in 2010)',
  rows: [
    { diameter: 1 / 2, edge: 7 / 8 },
    { diameter: 5 / 8, edge: 1 + 1 / 8 },
    { diameter: 3 / 4, edge: 1 + 1 / 4 },
    { diameter: 7 / 8, edge: 1 + 1 / 2 },
    { diameter: 1, edge: 1 + 3 / 4 },
    { diameter: 1 + 1 / 8, edge: 2 },
    { diameter: 1 + 1 / 4, edge: 2 + 1 / 4 },
  ],
  aboveFactor: 1.75,
  connectionEnd: {
    diameters: [7 / 8, 1],
    edge: 1 + 1 / 4,
    note: '7/8 and 1 in bolts may be at 1-1/4 in at the ends of beam connection angles and shear end plates.',
  },
};

/** Source: AISC 360-05 Table J3.4M, at sheared edges, mm (checked against a reprint); withdrawn in 2010. */
const shearedMetric: EdgeTable = {
  source: 'AISC 360-05 Table J3.4M, at sheared edges (edition withdrawn in 2010)',
  rows: [
    { diameter: 16, edge: 28 },
    { diameter: 20, edge: 34 },
    { diameter: 22, edge: 38 },
    { diameter: 24, edge: 42 },
    { diameter: 27, edge: 48 },
    { diameter: 30, edge: 52 },
    { diameter: 36, edge: 64 },
  ],
  aboveFactor: 1.75,
  connectionEnd: {
    diameters: [22, 24],
    edge: 32,
    note: 'M22 and M24 bolts may be at 32 mm at the ends of beam connection angles and shear end plates.',
  },
};

/** Source: CSA S16, minimum edge distance, at sheared edges, mm (from memory). */
const csaSheared: EdgeTable = {
  source: 'CSA S16, minimum edge distance, sheared edge (from memory)',
  rows: shearedMetric.rows,
  aboveFactor: 1.75,
};

/** Source: CSA S16, minimum edge distance, at rolled, sawn or gas-cut edges, mm (from memory). */
const csaRolled: EdgeTable = {
  source: 'CSA S16, minimum edge distance, rolled, sawn or gas-cut edge (from memory)',
  rows: aiscMetric.rows,
  aboveFactor: 1.25,
};

export const edgeTables = { aiscInch, aiscMetric, shearedInch, shearedMetric, csaSheared, csaRolled };

/** Increments C2 for oversize holes and slots across the edge, by the largest diameter of the row. */
export interface IncrementTable {
  source: string;
  rows: readonly { upToDiameter: number; oversize: number; shortSlot: number }[];
}

/** Source: AISC 360-22 Table J3.5, inches (checked against a reprint). A long slot across the edge adds 3/4 d. */
export const incrementInch: IncrementTable = {
  source: 'AISC 360-22 Table J3.5',
  rows: [
    { upToDiameter: 7 / 8, oversize: 1 / 16, shortSlot: 1 / 8 },
    { upToDiameter: 1, oversize: 1 / 8, shortSlot: 1 / 8 },
    { upToDiameter: Infinity, oversize: 1 / 8, shortSlot: 3 / 16 },
  ],
};

/** Source: AISC 360-22 Table J3.5M, mm (checked against a reprint). */
export const incrementMetric: IncrementTable = {
  source: 'AISC 360-22 Table J3.5M',
  rows: [
    { upToDiameter: 22, oversize: 2, shortSlot: 3 },
    { upToDiameter: 24, oversize: 3, shortSlot: 3 },
    { upToDiameter: Infinity, oversize: 3, shortSlot: 5 },
  ],
};
export const longSlotIncrementFactor = 0.75;
