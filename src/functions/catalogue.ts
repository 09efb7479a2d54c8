import type { Descriptor } from './descriptor.js';
import { punchForce } from './force/punchForce.js';
import { shearForce } from './force/shearForce.js';
import { pressValue } from './press/pressValue.js';
import { punchUse } from './press/punchUse.js';
import { shearUse } from './press/shearUse.js';
import { shop } from './press/shop.js';
import { length } from './quantity/length.js';
import { listCheck } from './row/listCheck.js';
import { rowCheck } from './row/rowCheck.js';
import { edgeMin } from './rule/edgeMin.js';
import { sectionMass } from './section/sectionMass.js';
import { dieClearance } from './tooling/dieClearance.js';
import { holeMin } from './tooling/holeMin.js';
import { workingOf } from './working/working.js';

export const namespace = 'TONROW';

/** The functions that calculate, in the order of the reference. */
const calculations: readonly Descriptor[] = [
  punchForce,
  shearForce,
  holeMin,
  dieClearance,
  edgeMin,
  sectionMass,
  length,
  shop,
  pressValue,
  punchUse,
  shearUse,
  rowCheck,
  listCheck,
];

/** Every workbook function. */
export const catalogue: readonly Descriptor[] = [...calculations, workingOf(calculations)];
