import type { Section } from './section.js';

/** Flanges of US channels are 2 in 12 thicker toward the web. */
const slope = 1 / 6;

/**
 * The thickness of a channel's flange at a gage line. The table's thickness is the mean, at half the
 * outstand; a tapered flange gains 1 in 6 toward the web.
 *
 * Formula: t = tf + ((bf + tw) / 2 − g) / 6; parallel flanges t = tf.
 * @param input.section the channel, mm
 * @param input.gageMm from the back of the web to the line, mm
 * @returns thickness in mm, never under the toe's nor over the root's
 * Valid from the web to the toe; outside, the nearer end is taken. Throws nothing.
 * @example C12X20.7 at the toe: 0.280 in; at the web: 0.723 in
 * Source: AISC Manual Part 1, American Standard channels; a 1923 mill handbook prints toe and root (from memory).
 */
export function flangeThicknessMm(input: {
  section: Extract<Section, { kind: 'channel' }>;
  gageMm: number;
}): number {
  const { flangeThicknessMm: mean, flangeWidthMm, webThicknessMm, taperedFlange } = input.section;
  if (!taperedFlange) return mean;
  const gageMm = Math.min(Math.max(input.gageMm, webThicknessMm), flangeWidthMm);
  return mean + ((flangeWidthMm + webThicknessMm) / 2 - gageMm) * slope;
}
