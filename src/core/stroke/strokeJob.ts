import type { PressItemKey } from '../press/item/pressItem.js';

export const strokeOperations = ['punch', 'notch', 'flat shear', 'angle shear', 'bar shear', 'bend'] as const;
export type StrokeOperation = (typeof strokeOperations)[number];

/** The station that an operation needs. */
export const stationOfStroke = {
  punch: 'punch',
  notch: 'notcher',
  'flat shear': 'flatShear',
  'angle shear': 'angleShear',
  'bar shear': 'barShear',
  bend: 'bend',
} as const satisfies Record<StrokeOperation, PressItemKey>;

export interface StrokeJob {
  operation: StrokeOperation;
  /** Of the material under the blade or punch; of a bar its size. */
  thicknessMm: number;
  /** Length of the punch, where it is known. */
  punchHeightMm?: number;
}

/** Whether an operation is one of the three shears. */
export function isShear(operation: StrokeOperation): boolean {
  return operation.endsWith('shear');
}
