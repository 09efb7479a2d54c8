import { inventedTimes } from './inventedTimes.js';
import type { PressItem } from './pressItem.js';

type InventedTime = keyof typeof inventedTimes;

const invented = (key: InventedTime, unit: string) => {
  const text = `${inventedTimes[key].value} ${unit}, invented,`;
  return { in: text, mm: text };
};

/** The rows of the Presses table about strokes, time and rates, as `pressItems` has them. */
export const timeItems = [
  {
    key: 'approachSpeed',
    name: 'Approach speed',
    kind: 'speed',
    meaning: 'of the ram on its way to the work',
  },
  { key: 'pressSpeed', name: 'Press speed', kind: 'speed', meaning: 'of the ram through the work' },
  { key: 'returnSpeed', name: 'Return speed', kind: 'speed', meaning: 'of the ram on its way back' },
  {
    key: 'strokesPerMinute',
    name: 'Strokes per minute',
    kind: 'rate',
    meaning: 'strokes a minute at the travel below, where the speeds are not known',
  },
  {
    key: 'strokesPerMinuteTravel',
    name: 'Strokes per minute travel',
    kind: 'length',
    meaning: 'travel of those strokes',
  },
  {
    key: 'positionHit',
    name: inventedTimes.positionHit.item,
    kind: 'seconds',
    meaning: 'to bring a hole under the punch',
    whenBlank: invented('positionHit', 's'),
  },
  {
    key: 'advanceCut',
    name: inventedTimes.advanceCut.item,
    kind: 'seconds',
    meaning: 'to push the bar on to its stop or line',
    whenBlank: invented('advanceCut', 's'),
  },
  {
    key: 'markOutHole',
    name: inventedTimes.markOutHole.item,
    kind: 'seconds',
    meaning: 'to mark a hole out by hand, where fence and stop cannot set it',
    whenBlank: invented('markOutHole', 's'),
  },
  {
    key: 'deburr',
    name: inventedTimes.deburr.item,
    kind: 'seconds',
    meaning: 'to deburr a cut, a notch or a hole',
    whenBlank: invented('deburr', 's'),
  },
  {
    key: 'stageBar',
    name: inventedTimes.stageBar.item,
    kind: 'seconds',
    meaning: 'to bring a bar to the shear, besides lifting it',
    whenBlank: invented('stageBar', 's'),
  },
  {
    key: 'toolChange',
    name: inventedTimes.toolChange.item,
    kind: 'minutes',
    meaning: 'to change punch and die, or the die alone, and align them',
    whenBlank: invented('toolChange', 'min'),
  },
  {
    key: 'holderChange',
    name: inventedTimes.holderChange.item,
    kind: 'minutes',
    meaning: 'to change the holder of the punch',
    whenBlank: invented('holderChange', 'min'),
  },
  {
    key: 'gaugeChange',
    name: inventedTimes.gaugeChange.item,
    kind: 'minutes',
    meaning: 'to set fence and stop, or the back gauge, once',
    whenBlank: invented('gaugeChange', 'min'),
  },
] as const satisfies readonly PressItem[];
