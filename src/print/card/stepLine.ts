import { formatLength, formatSizes } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { stepNotes, stepTitle, wayWords } from '../../core/say/stepWords.js';
import type { OperatorStep } from '../../core/work/operatorStep.js';

/** A step as it stands on a card: what it is, and all that is set for it. */
export interface StepLine {
  title: string;
  words: string;
}

export function stepLine(step: OperatorStep, unit: LengthUnit): StepLine {
  const { punch, die, holder, stopMm, fenceMm, upperMm, lowerMm, hits, mode } = step;
  const { stopSide, ...told } = step;
  const size = (mm: number) => formatSizes([mm], unit);
  const way = wayWords(step);
  const facts = [
    ...(holder === undefined ? [] : [`holder ${holder}`]),
    ...(punch === undefined ? [] : [`punch ${punch}`]),
    ...(die === undefined ? [] : [`die ${die}`]),
    ...(stopMm === undefined ? [] : [`${stopSide ?? ''} stop ${size(stopMm)}`.trim()]),
    ...(fenceMm === undefined ? [] : [`fence ${size(fenceMm)}`]),
    ...(upperMm === undefined ? [] : [`upper ${formatLength(upperMm, unit)}`]),
    ...(lowerMm === undefined ? [] : [`lower ${formatLength(lowerMm, unit)}`]),
    ...(mode === undefined ? [] : [mode]),
    ...(hits === undefined ? [] : [`${hits} ${hits === 1 ? 'hit' : 'hits'} a piece`]),
    ...(way === '' || way === 'as it lies' ? [] : [way]),
  ];
  const said = facts.length === 0 ? '' : `${facts.join(', ')}. `;
  return { title: stepTitle(step), words: `${said}${stepNotes(told, unit)}`.trim() };
}
