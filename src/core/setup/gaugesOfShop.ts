import { limitOf } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import type { GaugeInput, GaugeReach, GaugeSettings } from './gaugeSetting.js';
import { bestOf, gaugeSettings } from './gaugeSettings.js';
import { pressReach } from './pressReach.js';

/** The settings of the press that is best for them. */
export interface GaugesOfShop extends GaugeSettings {
  /** The press whose reach they are checked against; none where no press punches. */
  press?: string;
  unknown: readonly PressItemKey[];
}

const anywhere: GaugeReach = {
  fence: { least: 0, most: Infinity },
  leftStop: { least: 0, most: Infinity },
  rightStop: { least: 0, most: Infinity },
};

/**
 * The fewest settings for a plate on the press of a shop that reaches most holes, and of these needs fewest settings;
 * the first of several. Without a press that punches, nothing is checked against a reach.
 */
export function gaugesOfShop(input: Omit<GaugeInput, 'reach'>, presses: readonly Press[]): GaugesOfShop {
  const onEach = presses
    .filter((press) => limitOf(press, 'punch') !== 0)
    .map((press): GaugesOfShop => {
      const { reach, unknown } = pressReach(press, input.widthMm, false);
      return { ...gaugeSettings({ ...input, reach }), press: press.name, unknown };
    });
  const [first, ...others] = onEach;
  if (!first) return { ...gaugeSettings({ ...input, reach: anywhere }), unknown: [] };
  return bestOf(first, others);
}
