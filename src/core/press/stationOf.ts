import type { PressFinding } from '../check/finding.js';
import type { Working } from '../working/working.js';
import { limitOf, pressSource } from './limit.js';
import type { Press } from './press.js';
import type { PressItemKey, Station } from './item/pressItem.js';

const stationNames = {
  punch: 'punch',
  flatShear: 'flat shear',
  angleShear: 'angle shear',
  barShear: 'bar shear',
  notcher: 'notcher',
  bend: 'bending attachment',
} as const satisfies Partial<Record<PressItemKey, Station>>;

/**
 * Whether the press has a station: `missing` ends the check; a blank or unreadable cell is a finding beside
 * the others, since the limits may still be known. A station that is there needs no finding.
 */
export function stationOf(
  press: Press,
  key: keyof typeof stationNames,
  working?: Working,
): { findings: PressFinding[]; missing: boolean } {
  const station = stationNames[key];
  const value = limitOf(press, key);
  const missing = value === 0;
  const findings: PressFinding[] = missing
    ? [
        {
          rule: 'station',
          outcome: 'failed',
          verdict: 'No station',
          press: press.name,
          needed: station,
          station,
        },
      ]
    : typeof value === 'number'
      ? []
      : [{ ...value, station }];
  working?.step({
    title: `Station: ${station}`,
    formula: 'the press has the station',
    values: [{ symbol: 'press', meaning: 'press', kind: 'text', value: press.name }],
    result: {
      symbol: 'verdict',
      meaning: 'outcome of the check',
      kind: 'text',
      value: findings[0]?.verdict ?? 'OK',
    },
    source: pressSource,
  });
  return { findings, missing };
}
