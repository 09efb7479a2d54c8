import type { Station } from '../../core/press/item/pressItem.js';
import { formatLength, formatOnRule } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { stepNotes, stepTitle, wayWords } from '../../core/say/stepWords.js';
import type { OperatorStep } from '../../core/work/operatorStep.js';

const shears = new Set<Station>(['flat shear', 'angle shear', 'bar shear']);

/** A step of the operator in words; with its title and station where it stands in the list of all. */
export function stepText(step: OperatorStep, unit: LengthUnit, { titled = false } = {}): string {
  const length = (mm: number) => `${formatLength(Math.abs(mm), unit)} ${unit}`;
  const { station, holder, punch, die, stopMm, fenceMm, upperMm, lowerMm, hits } = step;
  const under = station && shears.has(station) ? 'lower blade' : 'top of the die';
  const level = (mm: number) =>
    `${formatOnRule(Math.abs(mm), unit)} ${unit} ${mm < 0 ? 'below' : 'above'} the ${under}`;
  const facts = [
    holder === undefined ? '' : `holder ${holder}`,
    punch === undefined ? '' : `punch ${punch}`,
    die === undefined ? '' : `die ${die}`,
    stopMm === undefined ? '' : `stop at ${length(stopMm)}`,
    fenceMm === undefined ? '' : `fence at ${length(fenceMm)}`,
    wayWords(step),
    upperMm === undefined ? '' : `upper stop ${level(upperMm)}`,
    lowerMm === undefined ? '' : `lower stop ${level(lowerMm)}`,
    hits === undefined ? '' : `${hits} ${hits === 1 ? 'stroke' : 'strokes'} a piece`,
  ].filter((fact) => fact !== '');
  const said = facts.length === 0 ? '' : `${capital(facts.join(', '))}.`;
  const title = titled ? `${stepTitle(step)}${station === undefined ? '' : `, ${station}`}.` : '';
  return [title, said, stepNotes(step, unit)].filter((text) => text !== '').join(' ');
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
