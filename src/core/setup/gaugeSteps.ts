import { itemName } from '../press/limit.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { NamedValue, Working } from '../working/working.js';
import type { GaugesOfShop } from './gaugesOfShop.js';
import type { Plate, Turns } from './way.js';

const turnsMeaning: Record<Turns, string> = {
  none: 'as it lies only',
  half: 'as it lies and turned end for end',
  flip: 'as it lies, turned end for end, and flipped',
};

const bothTolerances =
  'A turned plate has its other end at the stop and its other edge at the fence: the tolerances of length and width ' +
  'enter the distance to holes that are made as it lies. Give turns "none" for holes that meet those of another part, ' +
  'unless their clearance covers both.';
const otherEnd =
  'The right stop holds the right end: the tolerance of the length enters the distance to holes made from the left end.';
const burrs = 'A flipped plate has burrs on both faces.';

/** What was allowed and within reach, and how many settings that takes. */
export function gaugeSteps(
  found: GaugesOfShop,
  { lengthMm, widthMm, turns, holes }: Plate & { turns: Turns; holes: number },
  working?: Working,
): void {
  working?.step({
    title: 'Ways round',
    formula: 'holes that a way round brings onto each other share a setting',
    values: [lengthValue('L', 'length', lengthMm), lengthValue('W', 'width', widthMm)],
    result: textValue('turns', 'ways round that are allowed', turnsMeaning[turns]),
    source: 'plane geometry; mating holes: common practice, no source',
    cautions: turns === 'none' ? [] : [bothTolerances, ...(turns === 'flip' ? [burrs] : [])],
  });
  working?.step({
    title: 'Reach',
    formula: 'fence and stops of the press that reaches most holes, with the fewest settings',
    values: [],
    result: textValue('press', 'press that the reach is checked against', found.press ?? 'none: no limits'),
    source: 'fence, stops and throat, as given in the Presses table',
    cautions: reachCautions(found),
  });
  working?.step({
    title: 'Gauge settings',
    formula: 'one for each set of holes that the ways round bring onto each other, where one is within reach',
    values: [
      count('holes', 'holes', holes),
      count('marked', 'holes to mark out by hand', found.marked.length),
    ],
    result: { symbol: 'settings', meaning: 'settings of stop and fence', ...gaugeCount(found) },
    source: 'number of orbits, group theory',
  });
}

function reachCautions({ unknown, settings }: GaugesOfShop): string[] {
  const usesBoth = new Set(settings.map(({ stop }) => stop)).size > 1;
  const names = unknown.map(itemName).join(', ');
  return [
    ...(unknown.length > 0 ? [`Not known of this press, and not checked against: ${names}.`] : []),
    ...(usesBoth ? [otherEnd] : []),
  ];
}

function count(symbol: string, meaning: string, value: number): NamedValue {
  return { symbol, meaning, kind: 'count', value };
}

/** The number of settings; in words where holes are left to mark out. */
export function gaugeCount({ settings, marked }: GaugesOfShop): Pick<NamedValue, 'kind' | 'value'> {
  if (marked.length === 0) return { kind: 'count', value: settings.length };
  const several = (number: number, thing: string) => `${number} ${thing}${number === 1 ? '' : 's'}`;
  const value = `${several(settings.length, 'setting')} and ${several(marked.length, 'hole')} to mark out by hand`;
  return { kind: 'text', value };
}
