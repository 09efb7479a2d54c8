import { formatOnRule } from '../../core/quantity/formatLength.js';
import type { Station } from '../../core/press/item/pressItem.js';
import { sizeAsTyped } from '../../core/quantity/sizeAsTyped.js';
import { sizeLikeTyped } from '../../core/quantity/sizeLikeTyped.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { HoleGroup } from '../../core/row/job/rowJob.js';
import { stepNotes, stepTitle } from '../../core/say/stepWords.js';
import type { OperatorStep } from '../../core/work/operatorStep.js';

/** A step as it stands on a card: what it is, and all that is set for it. */
export interface StepLine {
  title: string;
  words: string;
}

/** What a step is told with: its holes, and the length of the part as it is typed. */
interface Typed {
  groups: readonly HoleGroup[];
  length: string;
}

/**
 * Stop and fence of a setting are in the unit in which its holes are typed, as in the drawing; the back gauge is told as
 * the length of the part.
 */
export function stepLine(step: OperatorStep, { groups, length }: Typed, unit: LengthUnit): StepLine {
  const { punch, die, holder, stopMm, fenceMm, hits, mode } = step;
  const { stopSide } = step;
  const { typed = {} } = groups.find(({ number }) => number === step.holes?.[0]?.group) ?? {};
  const facts = [
    ...(holder === undefined ? [] : [`holder ${holder}`]),
    ...(punch === undefined ? [] : [`punch ${punch}`]),
    ...(die === undefined ? [] : [`die ${die}`]),
    ...(stopMm === undefined
      ? []
      : [
          `${stopSide ?? ''} stop ${
            step.action === 'back gauge'
              ? sizeLikeTyped(stopMm, length, unit)
              : sizeAsTyped(stopMm, [typed.end, typed.pitch, typed.holesAt], unit)
          }`.trim(),
        ]),
    ...(fenceMm === undefined
      ? []
      : [`fence ${sizeAsTyped(fenceMm, [typed.edge, typed.gage, typed.holesAt], unit)}`]),
    ...stopsOf(step, unit),
    ...(mode === undefined || step.action === 'mark out' ? [] : [mode]),
    ...(hits === undefined ? [] : [`${hits} ${hits === 1 ? 'stroke' : 'strokes'}`]),
  ];
  const said = facts.length === 0 ? '' : `${facts.join(', ')}. `;
  return { title: stepTitle(step), words: `${said}${stepNotes(toldOf(step), unit)}`.trim() };
}

const shears = new Set<Station>(['flat shear', 'angle shear', 'bar shear']);

/** Where the stroke stops: `5/8 above to 5/64 below the die`; how far a blade opens that goes all the way down: `open 13/16`. */
function stopsOf({ station, upperMm, lowerMm }: OperatorStep, unit: LengthUnit): string[] {
  const isShear = station !== undefined && shears.has(station);
  if (isShear && upperMm !== undefined && lowerMm === undefined)
    return [`open ${formatOnRule(upperMm, unit)}`];
  const level = (mm: number) => `${formatOnRule(Math.abs(mm), unit)} ${mm < 0 ? 'below' : 'above'}`;
  const told = [
    ...(upperMm === undefined ? [] : [level(upperMm)]),
    ...(lowerMm === undefined ? [] : [`to ${level(lowerMm)}`]),
  ];
  if (told.length === 0) return [];
  return [`${told.join(' ')} the ${isShear ? 'lower blade' : 'die'}`];
}

/** What the words say besides: not the side of the stop, nor how the part lies where it lies as the drawing has it. */
function toldOf(step: OperatorStep): OperatorStep {
  const ways = step.notes.filter((note) => note.is === 'at the gauges');
  const isAsDrawn = ways.every(({ turn, end }) => turn === 'as it lies' && end === 'left');
  const notes = isAsDrawn ? step.notes.filter((note) => note.is !== 'at the gauges') : step.notes;
  const told: OperatorStep = { ...step, notes };
  delete told.stopSide;
  return told;
}
