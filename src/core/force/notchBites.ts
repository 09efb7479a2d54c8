import { atMost } from '../atMost.js';
import { refuse } from '../inputError.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { notchForceN } from './notch.js';
import type { Notch } from './notchCutLength.js';

export interface NotchBites {
  /** How many hits the notch takes. */
  count: number;
  /** Of the first bite, the widest. */
  biteWidthMm: number;
  biteDepthMm: number;
  /** Of the worst bite, which is the first: it is cut on every side. */
  forceN: number;
}

/**
 * The bites a notch takes that is bigger than the tool: equal bites, as few as the tool allows in each
 * direction. In an edge the first bite is as wide as the narrowest tool, and the others take what is left. A bite under
 * half that tool, or thinner than the material, pushes the blade sideways and is refused, as is a vee bigger than its
 * tool, which cannot be divided.
 *
 * Formula: n = ⌈w / wt⌉ · ⌈d / dt⌉; first bite max(w / n, min(wn, w)); force of one bite by {@link notchForceN}
 * @param input the notch, the tool's width wt and depth dt, the narrowest tool wn (0 where left out), thickness, all in
 *   mm (a tool without a limit has Infinity); shear strength in MPa
 * @param working collects the steps when given
 * @returns number of bites, size of one in mm, force of the worst in N
 * Valid for sizes above zero; that a notch is narrower than wn is for the caller to find. Throws `invalid` for others, for a
 * bite under the thickness or half the tool, and a vee over the tool.
 * @example a notch 100 × 40 with a tool 60 × 50 is 2 bites of 50 × 40
 * Source: common practice, no source.
 */
export function notchBites(
  input: Notch & {
    toolWidthMm: number;
    toolDepthMm: number;
    narrowestMm?: number;
    thicknessMm: number;
    shearStrengthMPa: number;
  },
  working?: Working,
): NotchBites {
  const { widthMm, depthMm, where, toolWidthMm, toolDepthMm, thicknessMm, narrowestMm = 0 } = input;
  if (toolWidthMm !== Infinity) requirePositive('Tool width', toolWidthMm);
  if (toolDepthMm !== Infinity) requirePositive('Tool depth', toolDepthMm);
  requirePositive('Width', widthMm);
  requirePositive('Depth', depthMm);
  const across = divisions(widthMm, toolWidthMm);
  const deep = divisions(depthMm, toolDepthMm);
  const count = across * deep;
  if (where === 'vee' && count > 1) {
    refuse(
      'Notch',
      where,
      'a vee bigger than its tool cannot be divided into bites.',
      'Saw or flame cut it.',
    );
  }
  const biteWidthMm = Math.max(widthMm / across, Math.min(narrowestMm, widthMm));
  const lastWidthMm = across > 1 ? (widthMm - biteWidthMm) / (across - 1) : biteWidthMm;
  const biteDepthMm = depthMm / deep;
  requireThickEnough(Math.min(lastWidthMm, biteDepthMm), thicknessMm);
  if (across > 1) requireHalfTheTool(lastWidthMm, narrowestMm);
  if (count > 1) {
    working?.step({
      title: 'Bites of the notch',
      formula: 'n = ⌈w / wt⌉ · ⌈d / dt⌉',
      values: [
        lengthValue('w', 'width of the notch', widthMm),
        ...(toolWidthMm === Infinity ? [] : [lengthValue('wt', 'width of the tool', toolWidthMm)]),
        lengthValue('d', 'depth of the notch', depthMm),
        ...(toolDepthMm === Infinity ? [] : [lengthValue('dt', 'depth of the tool', toolDepthMm)]),
      ],
      result: { symbol: 'n', meaning: 'bites', kind: 'count', value: count },
      source: 'common practice; a bite is at least as wide as the material is thick and as half the tool',
    });
  }
  const forceN = notchForceN({ ...input, widthMm: biteWidthMm, depthMm: biteDepthMm }, working);
  return { count, biteWidthMm, biteDepthMm, forceN };
}

function divisions(sizeMm: number, toolMm: number): number {
  if (atMost(sizeMm, toolMm)) return 1;
  const whole = Math.round(sizeMm / toolMm);
  return atMost(sizeMm, whole * toolMm) ? whole : whole + 1;
}

function requireHalfTheTool(biteMm: number, toolMm: number): void {
  if (atMost(toolMm / 2, biteMm)) return;
  refuse(
    'Notch',
    String(biteMm),
    'its last bite would be under half the tool, which pushes the blade sideways.',
    'Use a narrower tool, or saw or flame cut it.',
  );
}

function requireThickEnough(biteMm: number, thicknessMm: number): void {
  requirePositive('Thickness', thicknessMm);
  if (atMost(thicknessMm, biteMm)) return;
  refuse(
    'Notch',
    String(biteMm),
    'a bite of it would be thinner than the material, which pushes the blade sideways.',
    'Use a bigger tool, or saw or flame cut it.',
  );
}
