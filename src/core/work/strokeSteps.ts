import { strokeLimits } from '../stroke/strokeLimits.js';
import type { StrokeJob, StrokeOperation } from '../stroke/strokeJob.js';
import type { Station } from '../press/item/pressItem.js';
import type { OperatorStep, StepNote } from './operatorStep.js';
import type { StepContext } from './stepContext.js';

const stations: Record<StrokeOperation, Station> = {
  punch: 'punch',
  notch: 'notcher',
  'flat shear': 'flat shear',
  'angle shear': 'angle shear',
  'bar shear': 'bar shear',
  bend: 'bending attachment',
};

/** The step that sets the stops of a stroke, and of a punch the one that sets the stripper. */
export function strokeSteps(job: StrokeJob, { press, shop }: StepContext): OperatorStep[] {
  const station = stations[job.operation];
  const limits = strokeLimits(press, job, shop);
  if (limits.is === 'test piece') return [{ action: 'stroke', station, notes: [{ is: 'test piece' }] }];
  if (limits.is !== 'stops') return [{ action: 'stroke', station, notes: [{ is: 'jog, then set' }] }];
  const { upperMm, lowerMm, stripperMm } = limits;
  const jog: StepNote[] =
    job.operation === 'punch' || job.operation === 'notch'
      ? [{ is: 'jog, then set' }, { is: 'check after grinding' }]
      : [{ is: 'full stroke' }];
  const stroke: OperatorStep = {
    action: 'stroke',
    station,
    upperMm,
    ...(lowerMm === undefined ? {} : { lowerMm }),
    notes: jog,
  };
  if (stripperMm === undefined) return [stroke];
  return [{ action: 'stripper', station, notes: [{ is: 'stripper height', heightMm: stripperMm }] }, stroke];
}
