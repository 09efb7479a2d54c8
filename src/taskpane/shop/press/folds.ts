import { isOfStation } from '../../../core/press/item/isOfStation.js';
import { gaugeItems } from '../../../core/press/item/gaugeItems.js';
import { inventedTimes } from '../../../core/press/item/inventedTimes.js';
import { timeItems } from '../../../core/press/item/timeItems.js';
import { type PressItem, type PressItemKey, pressItems } from '../../../core/press/item/pressItem.js';

export interface Fold {
  title: string;
  items: PressItem[];
  /** Drops the words that the title says already. */
  label: (item: PressItem) => string;
  /** What its values are needed for, where that is not the checks of every row. */
  note?: string;
}

const whole: readonly PressItemKey[] = ['punchForce', 'shearForce', 'shareToUse', 'referenceShear'];
const blades: readonly PressItemKey[] = ['bladeMaterialLimit'];
const supports: readonly PressItemKey[] = ['longestBar', 'heaviestBar'];
const gauges: readonly PressItemKey[] = gaugeItems.map(({ key }) => key);
const times: readonly PressItemKey[] = timeItems.flatMap(({ key }) => (isInvented(key) ? key : []));
const strokes: readonly PressItemKey[] = [
  ...(['punchOpenHeight', 'shearStroke', 'notcherStroke'] as const),
  ...timeItems.flatMap(({ key }) => (isInvented(key) ? [] : key)),
];
const rate: readonly PressItemKey[] = ['hourlyRate', 'crew'];
/** Two sizes of one thing, which share a line. */
export const pairs: readonly (readonly [PressItemKey, PressItemKey])[] = [
  ['punchLargestHole', 'punchLargestHoleThickness'],
  ['flatShearWidestBar', 'flatShearWidestBarThickness'],
  ['flatShearThickestBarWidth', 'flatShearThickestBar'],
  ['angleShearLegSquare', 'angleShearThicknessSquare'],
  ['angleShearLeg45', 'angleShearThickness45'],
  ['notcherWidth', 'notcherDepth'],
];

const apart = new Set<string>([whole, blades, supports, gauges, times, strokes, rate].flat());

/** The items that the checks of a row need, in the order in which a plate is read: whole press, stations, supports. */
const checkFolds: readonly Fold[] = [
  foldOf('Whole press', whole),
  ...['Punch', 'Flat shear', 'Angle shear', 'Bar shear', 'Notcher', 'Bend'].map(stationFold),
  foldOf('Blades', blades),
  foldOf('Supports', supports),
];

/** The items that only setting up, time and cost need. */
const workFolds: readonly Fold[] = [
  foldOf('Gauges', gauges, 'Needed for the settings of back gauge, fence and stops; blank is not known.'),
  foldOf('Strokes', strokes, 'Needed for the stops of a stroke and its time; blank is not known.'),
  foldOf(
    'Time',
    times,
    'Needed for minutes and cost; blank uses an invented time, which every result names.',
  ),
  foldOf('Rate', rate, 'Needed for cost and price; without an hourly rate a row has minutes and no cost.'),
];

/** The folds of the form of a press, by what they are needed for; what no check needs is folded away as a whole. */
export const foldGroups: readonly { title: string; folds: readonly Fold[]; isFolded?: true }[] = [
  { title: 'What the checks need', folds: checkFolds },
  { title: 'Set-up, time and cost', folds: workFolds, isFolded: true },
];

/** The station of a fold, and what is asked of it: nothing more where the press has not got it. */
export function shownItems({ items }: Fold, text: (item: string) => string): PressItem[] {
  const station = items.find(({ kind }) => kind === 'station');
  return station && text(station.name).trim().toLowerCase() !== 'yes' ? [station] : items;
}

/** Items in lines: a pair shares one, at the place of the first of the two. */
export function linesOf(items: readonly PressItem[]): PressItem[][] {
  const byKey = (key: string) => items.find((item) => item.key === key);
  return items.flatMap((item) => {
    const pair = pairs.find((each) => each.some((key) => key === item.key));
    const both = pair?.flatMap((key) => byKey(key) ?? []) ?? [];
    if (both.length < 2) return [[item]];
    const firstOfBoth = items.find((each) => both.includes(each));
    return item === firstOfBoth ? [both] : [];
  });
}

/** Whether a blank cell of an item stands for a time that nobody measured. */
export function isInvented(key: string): boolean {
  return key in inventedTimes;
}

function foldOf(title: string, keys: readonly PressItemKey[], note?: string): Fold {
  return { ...withItems(title, (item) => keys.some((key) => key === item.key)), ...(note ? { note } : {}) };
}

function stationFold(title: string): Fold {
  return withItems(title, ({ key, name }) => !apart.has(key) && (name === title || isOfStation(name, title)));
}

function withItems(title: string, belongs: (item: PressItem) => boolean): Fold {
  return {
    title,
    items: pressItems.filter((item) => belongs(item)),
    label: ({ name, kind }) => (kind === 'station' ? 'On this press' : shorter(name, title)),
  };
}

function shorter(name: string, title: string): string {
  const rest = isOfStation(name, title) ? name.slice(title.length + 1) : name;
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
