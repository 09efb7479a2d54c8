import type { Section } from './section.js';

/**
 * The thickness of a channel's flange at a gage line. The table's thickness holds at one place; a tapered
 * flange gains with its slope toward the web: 1 in 6 for US channels, 8% for UPN.
 *
 * Formula: t = tf + (g0 − g) · slope, g0 where the flange has its nominal thickness
 * @param input.section the channel, mm
 * @param input.gageMm from the back of the web to the line, mm
 * @returns thickness in mm, never under the toe's nor over the root's
 * Valid from the web to the toe; outside, the nearer end is taken. Throws nothing.
 * @example C12X20.7 at the toe: 0.280 in; at the web: 0.723 in
 * Source: AISC Manual Part 1, American Standard channels; a 1923 mill handbook prints toe and root of C12X20.7;
 *   EN 10279 and EN 10365, UPN (from memory).
 */
export function flangeThicknessMm(input: {
  section: Extract<Section, { kind: 'channel' }>;
  gageMm: number;
}): number {
  const { flangeThicknessMm: nominal, flangeWidthMm, webThicknessMm } = input.section;
  const gageMm = Math.min(Math.max(input.gageMm, webThicknessMm), flangeWidthMm);
  return nominal + (input.section.flangeNominalAtMm - gageMm) * input.section.flangeSlope;
}
