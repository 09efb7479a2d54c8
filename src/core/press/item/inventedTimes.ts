/**
 * Times a shop has not given yet. Every one is invented, and a result that uses one names it until the shop has written
 * its own. Nothing else in the sources holds such a number.
 */
export const inventedTimes = {
  positionHit: { item: 'Seconds to position a hit', value: 12 },
  advanceCut: { item: 'Seconds to advance a cut', value: 15 },
  markOutHole: { item: 'Seconds to mark out a hole', value: 30 },
  deburr: { item: 'Seconds to deburr', value: 10 },
  stageBar: { item: 'Seconds to stage a bar', value: 120 },
  stroke: { item: 'Seconds of a stroke', value: 4 },
  toolChange: { item: 'Minutes per tool change', value: 5 },
  holderChange: { item: 'Minutes per holder change', value: 8 },
  gaugeChange: { item: 'Minutes per gauge setting', value: 3 },
} as const;

/** The seconds of a lift: the first class that takes both the mass and the length. Invented, as the times above. */
export const inventedHandling = '20 kg 3 m: 8; 50 kg 6 m: 25; 250 kg 6 m: 60; more: 180';
export const inventedFirstPieceMin = 5;
export const inventedPieceMarkS = 5;
