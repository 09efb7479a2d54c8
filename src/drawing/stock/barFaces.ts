import type { BarInput } from './barInput.js';
import type { BarRun } from './barRuns.js';

/** A cut face, an end of the bar, or the end of the trim, in pixels. */
export interface BarFace {
  /** Where it stands in the middle of the strip. */
  x: number;
  /** How much farther right its upper end stands than its lower end. */
  lean: number;
}

export interface FacedPiece {
  left: BarFace;
  right: BarFace;
  run: BarRun;
}

/** A bar as it stands in its strip. */
export interface FacedBar {
  start: BarFace;
  trim: BarFace;
  pieces: FacedPiece[];
  end: BarFace;
  /** Where the grip begins. */
  gripX: number;
  pixelPerMm: number;
}

/** Half of the outline. */
const frameWidth = 2;

/**
 * The faces of a bar. A miter is drawn at its angle where there is room for it, and else as far along the bar as it takes
 * there: so faces never cross.
 */
export function facedBar(input: BarInput, runs: readonly BarRun[]): FacedBar {
  const { bar, widthMm, trimMm, gripMm, room } = input;
  const pixelPerMm = (room.width - 2 * frameWidth) / room.longestMm;
  const x = (mm: number) => frameWidth + mm * pixelPerMm;
  const { lengthMm } = bar.stock;
  const face = (mm: number, leanRad = 0): BarFace => ({ x: x(mm), lean: room.height * Math.tan(leanRad) });
  const halfMm = (leanRad: number) => (widthMm * Math.abs(Math.tan(leanRad))) / 2;
  const pieces = runs.flatMap((run) =>
    run.pieces.map(({ startMm, endMm, leanLeftRad, leanRightRad }) => ({
      run,
      left: face(startMm + halfMm(leanLeftRad), leanLeftRad),
      right: face(endMm - halfMm(leanRightRad), leanRightRad),
    })),
  );
  const faced = { start: face(0), trim: face(trimMm), pieces, end: face(lengthMm) };
  const share = leanShare(facesOf(faced));
  const leant = ({ x: at, lean }: BarFace): BarFace => ({ x: at, lean: lean * share });
  return {
    ...faced,
    pieces: pieces.map(({ run, left, right }) => ({ run, left: leant(left), right: leant(right) })),
    gripX: x(lengthMm - gripMm),
    pixelPerMm,
  };
}

/** All faces of a bar from its front end on. */
export function facesOf({
  start,
  trim,
  pieces,
  end,
}: Pick<FacedBar, 'start' | 'trim' | 'pieces' | 'end'>): BarFace[] {
  return [start, trim, ...pieces.flatMap(({ left, right }) => [left, right]), end];
}

/** How much of its lean every face can have, so that none crosses the next one. */
function leanShare(faces: readonly BarFace[]): number {
  return faces.reduce((share, face, at) => {
    const before = faces[at - 1];
    if (!before || before.lean === face.lean) return share;
    return Math.min(share, (2 * Math.max(0, face.x - before.x)) / Math.abs(face.lean - before.lean));
  }, 1);
}
