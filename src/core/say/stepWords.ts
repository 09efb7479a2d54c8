import { formatLength, formatOnRule } from '../quantity/formatLength.js';
import { formatMass } from '../quantity/formatMass.js';
import type { LengthUnit } from '../quantity/units.js';
import { radianPerDegree } from '../quantity/units.js';
import type { RouteStep } from '../row/route.js';
import type { Turn } from '../setup/way.js';
import type { OperatorStep, PlaceColumn, StepAction, StepNote } from '../work/operatorStep.js';
import { barLength } from './barLength.js';
import { keyWords } from './keyWords.js';
import { listWords } from './listWords.js';
import { bendAtWords, cutAtWords } from './placesWords.js';

const actions: Record<StepAction, string> = {
  'pull stock': 'Pull stock',
  'lock out': 'Lock out',
  tools: 'Tools',
  align: 'Jog and align the die',
  stripper: 'Stripper',
  'hold-down': 'Hold-down',
  stroke: 'Stroke',
  'back gauge': 'Back gauge',
  'gauge setting': 'Setting',
  'mark out': 'Mark out',
  'first piece': 'First piece',
  run: 'Run',
  'deburr and mark': 'Deburr and mark',
  'elsewhere first': 'First',
  elsewhere: 'Next',
};

/** What a step is, in a word or two: `Setting 2`. */
export function stepTitle({ action, setting }: OperatorStep): string {
  return setting === undefined ? actions[action] : `${actions[action]} ${setting}`;
}

const turns: Record<Turn, string> = {
  'as it lies': 'as it lies',
  'half turn': 'turned end for end',
  'over sideways': 'turned over, burr up',
  'over endways': 'turned over end for end, burr up',
};

/** How the part lies for a setting: every way round that its holes need. */
export function wayWords({ action, holes = [] }: OperatorStep): string {
  if (action !== 'gauge setting') return '';
  const ways = new Set(holes.map((hole) => hole.turn));
  return [...ways].map((each) => turns[each]).join('; then ');
}

/** What has to be minded at a step, one sentence each. */
export function stepNotes(step: OperatorStep, unit: LengthUnit): string {
  const told = step.notes.map((note) => sentence(note, unit));
  if (step.stopSide !== undefined) told.unshift(`Stop on the ${step.stopSide}.`);
  if (step.action === 'lock out') told.unshift('Lock out before hands go near the tools.');
  if (step.action === 'align')
    told.unshift('Jog the punch slowly into the die: the same gap all round, then tighten.');
  if (step.action === 'first piece')
    told.unshift('Check the first piece against the drawing before the run.');
  return told.join(' ');
}

const routeWords: Record<RouteStep, string> = {
  saw: 'Saw',
  burn: 'Burn',
  shear: 'Shear',
  punch: 'Punch',
  ream: 'Ream',
  notch: 'Notch',
  bend: 'Bend',
  drill: 'Drill',
  tap: 'Tap',
  countersink: 'Countersink',
};

function sentence(note: StepNote, unit: LengthUnit): string {
  const length = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  switch (note.is) {
    case 'bars':
      return `${counted(note.count, 'bar', 'bars')} of ${note.designation}, ${note.grade}, ${barLength(note.lengthMm, unit)} long.`;
    case 'longer than the bars':
      return `The bars of the shop are ${barLength(note.barMm, unit)} long: it is a bar of its own.`;
    case 'over the supports': {
      const limit =
        note.item === 'longest bar' ? barLength(note.limitMm, unit) : formatMass(note.limitKg, unit);
      return `The bar is over the ${note.item} that this press carries, ${limit}: cut it down first.`;
    }
    case 'pieces':
      return `${counted(note.count, 'piece', 'pieces')} of ${note.designation}, ${note.grade}.`;
    case 'jog, then set':
      return 'Jog with this tool, then set.';
    case 'check after grinding':
      return 'Check again after grinding. A short stroke is never a guard.';
    case 'slug not known':
      return 'The press does not say what its angle shear loses at a cut (Angle shear slug): set the gauge by the first piece.';
    case 'full stroke':
      return 'Full stroke down, for a clean drop.';
    case 'key the shape':
      return keyWords(note);
    case 'die block lowered':
      return 'Lower the die block first.';
    case 'leg down':
      return `${note.equalLegs ? 'Leg' : faceWords[note.face]} flat on the die, ${hanging[note.face]} ${length(note.otherMm)} hanging down.`;
    case 'hand':
      return `${note.hand === 'left' ? 'Left' : 'Right'}-hand miter: standing leg ${note.leg}.`;
    case 'at the gauges': {
      const way = note.turn === 'as it lies' ? '' : `${capital(turns[note.turn])}: `;
      return `${way}${way === '' ? capital(note.end) : note.end} end at the stop, ${edgeWords[note.edge]} at the fence.`;
    }
    case 'hand not given':
      return 'The list does not say which hand: ask before cutting.';
    case 'length not given':
      return 'The list does not say which edge is the long one: lay the cut out by hand.';
    case 'drill the corner first':
      return 'Drill the inside corners first, so that they do not tear.';
    case 'keep the drop side':
      return 'The piece drops behind the blade: keep that side clear.';
    case 'burr side':
      return 'The burr is underneath.';
    case 'test piece':
      return 'Set the stroke with a test piece.';
    case 'set to thickness':
      return `Set to ${length(note.thicknessMm)}.`;
    case 'stripper height':
      return `Level, ${formatOnRule(note.heightMm, unit)} ${unit} over the die.`;
    case 'touching starts the stroke':
      return 'Touching the gauge starts the cut.';
    case 'over the back gauge':
      return `Longer than the gauge reaches (${length(note.reachMm)}): mark the bar, cut by pedal.`;
    case 'no gauge known':
      return 'The press does not say how far its back gauge reaches: mark the bar, or set the gauge if it reaches.';
    case 'out of the gauges':
      return `${counted(note.holes, 'hole', 'holes')} out of reach of fence and stops: mark out by hand.`;
    case 'holes not given':
      return `The list does not say where ${counted(note.holes, 'hole lies', 'holes lie')}: ask before marking out.`;
    case 'miter':
      return `${note.end === 'left' ? 'Left' : 'Right'} end at ${Math.round((note.rad / radianPerDegree) * 100) / 100}° from square.`;
    case 'pieces in all':
      return `${counted(note.count, 'piece', 'pieces')} in all.`;
    case 'notch size': {
      const bites = note.bites === 1 ? '' : ` in ${note.bites} bites`;
      return `Notch ${length(note.widthMm)} wide, ${length(note.depthMm)} deep${bites}.`;
    }
    case 'clip size':
      return `Clip ${length(note.alongMm)} along, ${length(note.acrossMm)} across.`;
    case 'both hands':
      return `${note.right} right-hand and ${note.left} left-hand: the steps are for one hand, as the list has it; mirror them for the other.`;
    case 'cut at':
      return cutAtWords(note, unit);
    case 'bend at':
      return bendAtWords(note, unit);
    case 'vee':
      return `V opening ${length(note.veeMm)}.`;
    case 'next':
      return `${routeWords[note.route]}, away from this press.`;
  }
}

const faceWords = {
  plate: 'Plate',
  'leg A': 'Long leg',
  'leg B': 'Short leg',
  web: 'Web',
  'flange 1': 'Flange',
  'flange 2': 'Flange',
} as const;

/** What hangs down beside the die as a face lies on it. */
const hanging: Record<keyof typeof faceWords, string> = {
  plate: 'the other',
  'leg A': 'the other',
  'leg B': 'the other',
  web: 'the flanges',
  'flange 1': 'the web',
  'flange 2': 'the web',
};

const edgeWords = { bottom: 'bottom edge', top: 'top edge', heel: 'heel' } as const;

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Why a row of the list has no steps, where holes or other work have no given place. */
export function placesNotGiven({
  groups,
  columns,
}: {
  groups: readonly number[];
  columns: readonly PlaceColumn[];
}): string {
  const holes = groups.map((group) => (group === 0 ? 'Hole' : `Hole ${group + 1}`));
  const told = ['No steps: the press is never set to a guessed place.'];
  if (holes.length > 0) told.push(`The list does not give every place of ${listWords(holes)}.`);
  if (columns.length > 0) told.push(`Give ${listWords(columns)}.`);
  return told.join(' ');
}
