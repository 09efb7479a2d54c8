import { cutLength } from './cut/cutLength.js';
import { frameCuts } from './cut/frameCuts.js';
import { miterKerf } from './cut/miterKerf.js';
import { miterShort } from './cut/miterShort.js';
import type { Descriptor } from './descriptor/descriptor.js';
import { bendForce } from './force/bendForce.js';
import { notchForce } from './force/notchForce.js';
import { punchForce } from './force/punchForce.js';
import { shearForce } from './force/shearForce.js';
import { stripForce } from './force/stripForce.js';
import { gradeValue } from './material/gradeValue.js';
import { bendUse } from './press/bendUse.js';
import { notchUse } from './press/notchUse.js';
import { pressValue } from './press/pressValue.js';
import { punchUse } from './press/punchUse.js';
import { shearUse } from './press/shearUse.js';
import { shop } from './press/shop.js';
import { holesCircle } from './layout/holesCircle.js';
import { holesCorner } from './layout/holesCorner.js';
import { holesGrid } from './layout/holesGrid.js';
import { holesRow } from './layout/holesRow.js';
import { feetInch } from './quantity/feetInch.js';
import { length } from './quantity/length.js';
import { listCheck } from './row/listCheck.js';
import { rowCheck } from './row/rowCheck.js';
import { rowSetup } from './row/rowSetup.js';
import { rowPress } from './row/rowPress.js';
import { angleGage } from './rule/angleGage.js';
import { boltHole } from './rule/boltHole.js';
import { edgeMin } from './rule/edgeMin.js';
import { pitchMin } from './rule/pitchMin.js';
import { paintArea } from './section/paintArea.js';
import { sectionArea } from './section/sectionArea.js';
import { sectionDim } from './section/sectionDim.js';
import { sectionMass } from './section/sectionMass.js';
import { gaugeCount } from './setup/gaugeCount.js';
import { gaugeSettings } from './setup/gaugeSettings.js';
import { stockBars } from './stock/stockBars.js';
import { stockPlan } from './stock/stockPlan.js';
import { strokeLimits } from './stroke/strokeLimits.js';
import { strokeTime } from './stroke/strokeTime.js';
import { rowHoles } from './setup/rowHoles.js';
import { dieClearance } from './tooling/dieClearance.js';
import { dieOpening } from './tooling/dieOpening.js';
import { holeMin } from './tooling/holeMin.js';
import { toolOrder } from './tooling/toolOrder.js';
import { toolPick } from './tooling/toolPick.js';
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
  stripForce,
  notchForce,
  bendForce,
  dieOpening,
  boltHole,
  pitchMin,
  angleGage,
  sectionArea,
  paintArea,
  sectionDim,
  gradeValue,
  notchUse,
  bendUse,
  feetInch,
  rowPress,
  rowSetup,
  holesCorner,
  holesRow,
  holesGrid,
  holesCircle,
  gaugeSettings,
  gaugeCount,
  rowHoles,
  miterKerf,
  miterShort,
  cutLength,
  frameCuts,
  toolPick,
  toolOrder,
  strokeLimits,
  strokeTime,
  stockPlan,
  stockBars,
];

/** Every workbook function. */
export const catalog: readonly Descriptor[] = [...calculations, workingOf(calculations)];
