import { gaugeItems } from '../../../core/press/gaugeItems.js';
import { timeItems } from '../../../core/press/timeItems.js';
import { type PressItem, pressItems } from '../../../core/press/pressItem.js';

export interface Fold {
  title: string;
  items: PressItem[];
  /** Drops the words that the title says already. */
  label: (item: PressItem) => string;
}

const stations = ['Punch', 'Flat shear', 'Angle shear', 'Bar shear', 'Notcher', 'Bend'];
const general = new Set<string>(['punchForce', 'shearForce', 'shareToUse', 'referenceShear']);
const cost = new Set<string>(['hourlyRate', 'crew']);
const time = new Set<string>(timeItems.map(({ key }) => key));
const gauge = new Set<string>(gaugeItems.map(({ key }) => key));
const blades = new Set<string>(['shearStroke', 'bladeMaterialLimit']);
const support = new Set<string>(['longestBar', 'heaviestBar']);

/** The items of a press in the order in which its plate and manual are read: whole press, stations, supports. */
export const folds: readonly Fold[] = [
  foldOf('Whole press', (item) => general.has(item.key)),
  ...stations.map((title) =>
    foldOf(
      title,
      (item) => !general.has(item.key) && (item.name === title || item.name.startsWith(`${title} `)),
    ),
  ),
  foldOf('Blades', (item) => blades.has(item.key)),
  foldOf('Supports', (item) => support.has(item.key)),
  foldOf('Gauges', (item) => gauge.has(item.key)),
  foldOf('Time and rate', (item) => time.has(item.key) || cost.has(item.key)),
];

function foldOf(title: string, belongs: (item: PressItem) => boolean): Fold {
  const items = pressItems.filter((item) => belongs(item));
  return {
    title,
    items,
    label: ({ name, kind }) => (kind === 'station' ? 'On this press' : shorter(name, title)),
  };
}

function shorter(name: string, title: string): string {
  const rest = name.startsWith(`${title} `) ? name.slice(title.length + 1) : name;
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
