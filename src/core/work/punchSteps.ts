import { facesOf } from '../row/job/faces.js';
import type { FaceId } from '../part/part.js';
import type { RowGaugeSetting } from '../setup/rowGauge.js';
import type { PunchPass } from './gaugeUse.js';
import type { OperatorStep, StepNote } from './operatorStep.js';
import type { StepContext } from './stepContext.js';
import { piecesNote } from './piecesNote.js';
import { strokeSteps } from './strokeSteps.js';
import type { Punching } from './operations.js';
import { toolSetOf } from './toolSets.js';

const station = 'punch';

/** Punching with one punch: tools, stripper, stroke, every setting of fence and stop, first piece, run. */
export function punchSteps({ punchings, gauges }: PunchPass, context: StepContext): OperatorStep[] {
  const [first] = punchings;
  if (!first) return [];
  const { row, press, shop } = context;
  const { heightMm, ...tools } = toolSetOf(first, row, press, shop);
  const keyed: StepNote[] = first.hole.shape === 'round' ? [] : [keyNote(punchings, context)];
  const job = { operation: 'punch', thicknessMm: first.thicknessMm } as const;
  const settings = gauges.flatMap(({ face, settings: set }) =>
    set.map(
      (each): OperatorStep => ({
        action: 'gauge setting',
        station,
        mode: 'pedal',
        stopMm: each.stopMm,
        stopSide: each.stop,
        fenceMm: each.fenceMm,
        hits: each.hits.length,
        holes: each.hits.map(({ group, index, turn }) => ({ group, index, turn })),
        notes: [...atGauges(each), ...faceNotes(face, context)],
      }),
    ),
  );
  const beyond = gauges.flatMap(({ marked: holes }) => holes);
  const notGiven = gauges.flatMap((gauge) => gauge.notGiven);
  const byHand = [...beyond, ...notGiven];
  const marked: OperatorStep[] =
    byHand.length === 0
      ? []
      : [
          {
            action: 'mark out',
            station,
            mode: 'marked',
            hits: byHand.length,
            holes: byHand.map((hole) => ({ ...hole, turn: 'as it lies' })),
            notes: [
              ...(beyond.length > 0 ? [{ is: 'out of the gauges', holes: beyond.length } as const] : []),
              ...(notGiven.length > 0 ? [{ is: 'holes not given', holes: notGiven.length } as const] : []),
            ],
          },
        ];
  const hits = punchings.reduce((sum, { holes }) => sum + holes.length, 0);
  return [
    { action: 'lock out', station, notes: [] },
    { action: 'tools', station, ...tools, notes: keyed },
    { action: 'align', station, notes: [] },
    ...strokeSteps(heightMm === undefined ? job : { ...job, punchHeightMm: heightMm }, context),
    ...settings,
    ...marked,
    { action: 'first piece', station, notes: [] },
    {
      action: 'run',
      station,
      mode: 'pedal',
      hits,
      notes: [{ is: 'burr side' }, piecesNote(row)],
    },
  ];
}

/** Which way the holes are long, as the row has it; both where groups of one size differ. */
function keyNote(punchings: readonly Punching[], { row }: StepContext): StepNote {
  const [shape] = punchings.map(({ hole }) => hole.shape);
  if (shape !== 'slot' && shape !== 'rectangle') return { is: 'key the shape' };
  const ways = punchings.map(({ group }) => row.places.find(({ index }) => index === group)?.group.slot);
  const [way] = ways;
  if (way === undefined || ways.includes(undefined)) return { is: 'key the shape', long: shape };
  return { is: 'key the shape', long: shape, way: new Set(ways).size > 1 ? 'both' : way };
}

/** Which end is at the stop and which edge at the fence, once for each way round. */
function atGauges({ hits }: RowGaugeSetting): StepNote[] {
  const told = new Map<string, StepNote>();
  for (const { turn, end, edge } of hits) told.set(turn, { is: 'at the gauges', turn, end, edge });
  return [...told.values()];
}

/** The other leg or the flanges hang down beside the die. */
function faceNotes(face: FaceId, { row: { section } }: StepContext): StepNote[] {
  if (face === 'plate') return [];
  const others = facesOf(section).filter(({ id }) => id !== face);
  const deepest = others.reduce((most, { widthMm }) => Math.max(most, widthMm), 0);
  const equalLegs = section.kind === 'angle' && section.legAMm === section.legBMm;
  return [{ is: 'leg down', face, otherMm: deepest, equalLegs }, { is: 'die block lowered' }];
}
