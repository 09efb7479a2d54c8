// Parts as a row might give them, before any geometry: what the library and the referees both start from.
import type { Direction } from '../../../src/core/part/holeShape.js';
import type {
  Clip,
  End,
  FaceEnd,
  Notch,
  NotchPlace,
  OutlineInput,
  Side,
} from '../../../src/core/part/outlineInput.js';
import type { FaceId } from '../../../src/core/part/part.js';
import type { Point } from '../../../src/core/part/point.js';
import type { EdgeKind } from '../../../src/core/rule/edgeDistance.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import type { Random } from './random.js';

export interface GivenFace {
  id: FaceId;
  input: OutlineInput;
}

export interface GivenHole {
  face: FaceId;
  group: number;
  index: number;
  hole: Hole;
  direction: Direction;
  center: Point;
}

export interface GivenBend {
  face: FaceId;
  from: Point;
  to: Point;
}

export interface GivenPart {
  faces: GivenFace[];
  holes: GivenHole[];
  bends: GivenBend[];
}

const facesOf = {
  plate: ['plate'],
  angle: ['leg A', 'leg B'],
  channel: ['web', 'flange 1', 'flange 2'],
} as const;

export function randomPart(random: Random): GivenPart {
  const ids: readonly FaceId[] =
    facesOf[random.pick<keyof typeof facesOf>(['plate', 'plate', 'angle', 'channel'])];
  const lengthMm = random.between(60, 800);
  const faces = ids.map((id) => ({ id, input: randomOutline(random, id, lengthMm) }));
  return {
    faces,
    holes: faces.flatMap((face) => randomHoles(random, face)),
    bends: faces.flatMap((face) => randomBends(random, face)),
  };
}

function randomOutline(random: Random, id: FaceId, lengthMm: number): OutlineInput {
  const widthMm = random.between(30, id === 'plate' ? 400 : 150);
  const heel = id.startsWith('leg') || id.startsWith('flange');
  return {
    lengthMm,
    widthMm,
    bottom: heel ? { is: 'heel', kind: 'none' } : { is: 'bottom edge', kind: 'rolled' },
    top: heel ? { is: 'toe', kind: 'rolled' } : { is: 'top edge', kind: 'sheared' },
    left: randomEnd(random),
    right: randomEnd(random),
    clips: Array.from({ length: random.chance(0.5) ? random.count(3) : 0 }, () => randomClip(random)),
    notches: Array.from({ length: random.chance(0.6) ? random.count(3) : 0 }, () =>
      randomNotch(random, lengthMm, widthMm),
    ),
  };
}

function randomEnd(random: Random): FaceEnd {
  if (random.chance(0.7)) return { kind: 'sheared' };
  return {
    kind: 'machine cut',
    miter: { rad: random.between(0.05, 1), long: random.pick(['bottom', 'top']) },
  };
}

function randomClip(random: Random): Clip {
  return {
    end: random.pick(['left', 'right']),
    side: random.pick(['bottom', 'top']),
    alongMm: random.between(5, 60),
    acrossMm: random.between(5, 60),
    kind: random.pick<EdgeKind>(['sheared', 'machine cut']),
  };
}

function randomNotch(random: Random, lengthMm: number, widthMm: number): Notch {
  const end = random.pick<End>(['left', 'right']);
  const side = random.pick<Side>(['bottom', 'top']);
  return {
    shape: random.pick(['rectangle', 'vee']),
    place: random.pick<NotchPlace>([
      { at: 'corner', end, side },
      { at: 'edge', side, centerMm: random.between(0, lengthMm) },
      { at: 'end', end, centerMm: random.between(0, widthMm) },
    ]),
    widthMm: random.between(5, 60),
    depthMm: random.between(5, 50),
    kind: random.pick<EdgeKind>(['sheared', 'machine cut']),
  };
}

function randomHoles(random: Random, { id, input }: GivenFace): GivenHole[] {
  const groups = 1 + random.count(2);
  return Array.from({ length: groups }, (_, group) => {
    const [hole, direction] = [randomHole(random), random.pick<Direction>(['along', 'across'])];
    return Array.from({ length: 1 + random.count(3) }, (_unused, index) => ({
      face: id,
      group,
      index,
      hole,
      direction,
      center: randomCenter(random, input),
    }));
  }).flat();
}

function randomHole(random: Random): Hole {
  const widthMm = random.between(6, 40);
  const lengthMm = widthMm + random.between(0, 50);
  return random.pick<Hole>([
    { shape: 'round', diameterMm: widthMm },
    { shape: 'slot', widthMm, lengthMm },
    { shape: 'square', sideMm: widthMm },
    { shape: 'rectangle', widthMm, lengthMm },
    { shape: 'hexagon', acrossFlatsMm: widthMm },
  ]);
}

/** Mostly on the face, often at its edge, sometimes off it; a third in whole 5 mm, so that some holes touch or meet. */
function randomCenter(random: Random, { lengthMm, widthMm }: OutlineInput): Point {
  const off = random.chance(0.15) ? 50 : 0;
  const x = random.between(-off, lengthMm + off);
  const y = random.between(-off, widthMm + off);
  if (random.chance(0.66)) return { x, y };
  return { x: Math.round(x / 5) * 5, y: Math.round(y / 5) * 5 };
}

function randomBends(random: Random, { id, input }: GivenFace): GivenBend[] {
  if (id !== 'plate' || random.chance(0.5)) return [];
  const { lengthMm, widthMm } = input;
  const [x, y] = [random.between(0, lengthMm), random.between(0, widthMm)];
  return [
    random.chance(0.5)
      ? { face: id, from: { x, y: 0 }, to: { x, y: widthMm } }
      : { face: id, from: { x: 0, y }, to: { x: lengthMm, y } },
  ];
}
