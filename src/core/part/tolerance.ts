/** The one tolerance of the geometry of a part, absolute. Two things nearer than this touch. */
export const toleranceMm = 1e-6;
