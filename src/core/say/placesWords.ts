import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { PartPlace, PartSide } from '../row/job/rowJob.js';
import type { StepNote } from '../work/operatorStep.js';
import { listWords } from './listWords.js';

const sides: Record<PartSide, string> = { bottom: 'bottom edge', top: 'top edge', heel: 'heel', toe: 'toe' };

/** Where notches or clipped corners are: `At the top edge, its middle 6 in from the left end.` */
export function cutAtWords(
  { places, allCorners, isAngle }: Extract<StepNote, { is: 'cut at' }>,
  unit: LengthUnit,
): string {
  if (!places) {
    return allCorners ? 'At all four corners.' : 'The list does not say where: ask before cutting.';
  }
  const words = places.map((place) => `the ${cutPlace(place, isAngle, unit)}${legWords(place)}`);
  return `At ${listWords(words)}.`;
}

/** Where bend lines are: `Bend line 3 in from the left end.` The list has neither their angle nor their direction. */
export function bendAtWords({ places }: Extract<StepNote, { is: 'bend at' }>, unit: LengthUnit): string {
  if (!places) return 'The list does not say where: ask before bending.';
  const words = places.map((place) => `${bendPlace(place, unit)}${legWords(place)}`);
  const lines = words.length > 1 ? 'lines' : 'line';
  return `Bend ${lines} ${listWords(words)}. Which way and how far: see the drawing.`;
}

function cutPlace(place: PartPlace, isAngle: boolean, unit: LengthUnit): string {
  switch (place.at) {
    case 'corner':
      return `${place.side} ${place.end} corner`;
    case 'end':
      return `${place.end} end${middle(place.fromMm, isAngle ? 'heel' : 'bottom edge', unit)}`;
    case 'edge':
      return `${sides[place.side]}${middle(place.fromMm, 'left end', unit)}`;
  }
}

function middle(fromMm: number | undefined, from: string, unit: LengthUnit): string {
  return fromMm === undefined ? '' : `, its middle ${length(fromMm, unit)} from the ${from}`;
}

function bendPlace(place: PartPlace, unit: LengthUnit): string {
  if (place.at === 'corner') return `${place.side} ${place.end} corner`;
  const from = place.at === 'end' ? `${place.end} end` : sides[place.side];
  return place.fromMm === undefined ? `at the ${from}` : `${length(place.fromMm, unit)} from the ${from}`;
}

function legWords({ leg }: PartPlace): string {
  if (leg === undefined) return '';
  if (leg === 'long' || leg === 'short') return ` of the ${leg} leg`;
  return leg === 'web' || leg.endsWith('flange') ? ` of the ${leg}` : ` of leg ${leg}`;
}

function length(mm: number, unit: LengthUnit): string {
  return `${formatLength(mm, unit)} ${unit}`;
}
