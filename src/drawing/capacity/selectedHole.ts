import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { cutPerimeterMm } from '../../core/tooling/cutPerimeter.js';
import { describeHole, type Hole } from '../../core/tooling/hole.js';
import type { Shape } from '../drawing.js';
import { diamond } from '../path.js';

/** The hole of the selected row. */
export interface SelectedHole {
  hole: Hole;
  thicknessMm: number;
}

/** The round hole with the same length of cut, which takes the same force. */
export function equalRoundMm(hole: Hole): number {
  return hole.shape === 'round' ? hole.diameterMm : cutPerimeterMm(hole) / Math.PI;
}

/** `Ø13/16`, or `square 3/4, which takes the force of Ø0.955`. */
export function selectedText({ hole }: SelectedHole, unit: LengthUnit): string {
  const own = describeHole(hole, unit);
  return hole.shape === 'round'
    ? own
    : `${own}, which takes the force of Ø${formatLength(equalRoundMm(hole), unit)}`;
}

/** The diamond of the selected row, with bare paper around it so that it stands out on a bar. */
export function selectedMark(x: number, y: number): Shape[] {
  return [
    { kind: 'area', path: diamond(x, y, 13), fill: 'paper' },
    { kind: 'area', path: diamond(x, y, 9), fill: 'paper', line: 'outline' },
  ];
}
