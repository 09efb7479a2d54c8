import type { PressItem } from './pressItem.js';

/** The rows of the Presses table about gauges: back gauge of the shears, fence and stops of the punch. */
export const gaugeItems = [
  {
    key: 'backGaugeReach',
    name: 'Back gauge reach',
    kind: 'length',
    meaning: 'longest piece the back gauge of the shears stops',
  },
  {
    key: 'backGaugeStartsStroke',
    name: 'Back gauge starts the stroke',
    kind: 'yesNo',
    meaning: 'does a bar that touches the back gauge start the cut: yes or no',
  },
  {
    key: 'fenceLeast',
    name: 'Fence least reach',
    kind: 'length',
    meaning: 'nearest the fence comes to the punch center',
  },
  {
    key: 'fenceGreatest',
    name: 'Fence greatest reach',
    kind: 'length',
    meaning: 'farthest the fence goes from the punch center',
  },
  {
    key: 'leftStopLeast',
    name: 'Left stop least reach',
    kind: 'length',
    meaning: 'nearest a stop comes to the punch center on the left',
  },
  {
    key: 'leftStopGreatest',
    name: 'Left stop greatest reach',
    kind: 'length',
    meaning: 'farthest a stop goes from the punch center on the left',
  },
  {
    key: 'rightStopLeast',
    name: 'Right stop least reach',
    kind: 'length',
    meaning: 'nearest a stop comes to the punch center on the right',
  },
  {
    key: 'rightStopGreatest',
    name: 'Right stop greatest reach',
    kind: 'length',
    meaning: 'farthest a stop goes from the punch center on the right',
  },
  {
    key: 'stopsAtOnce',
    name: 'Stops at once',
    kind: 'count',
    meaning: 'stops that stand set at the same time',
  },
] as const satisfies readonly PressItem[];
