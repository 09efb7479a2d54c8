import type { FaceId } from '../../core/part/part.js';
import { formatSizes } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Section } from '../../core/section/section.js';
import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { polygon } from '../path.js';

/** How a section lies, seen from its right end, with the operator at the left. */
export interface EndView {
  width: number;
  height: number;
  shapes: Shape[];
  /** In words: `leg 3 in down`. */
  words: string;
}

const room = 64;
const top = 20;
const leastThickness = 3;

/** The end view of an angle or a channel; undefined for what has no leg or flange. */
export function endViewOf(section: Section, face: FaceId, unit: LengthUnit): EndView | undefined {
  const size = (mm: number) => formatSizes([mm], unit);
  if (section.kind === 'angle') {
    const { legAMm, legBMm, thicknessMm } = section;
    const [lyingMm, downMm] = face === 'leg B' ? [legBMm, legAMm] : [legAMm, legBMm];
    return drawn(
      { lyingMm, downMm },
      (scale) => {
        const t = Math.max(thicknessMm * scale, leastThickness);
        const [w, h] = [lyingMm * scale, downMm * scale];
        return [[[0, 0], [w, 0], [w, t], [t, t], [t, h], [0, h]]]; // prettier-ignore
      },
      size(lyingMm),
      `leg ${size(downMm)} down`,
    );
  }
  if (section.kind !== 'channel') return undefined;
  const { depthMm, flangeWidthMm, webThicknessMm, flangeThicknessMm } = section;
  if (face === 'web')
    return drawn(
      { lyingMm: depthMm, downMm: flangeWidthMm },
      (scale) => {
        const [w, h] = [depthMm * scale, flangeWidthMm * scale];
        const web = Math.max(webThicknessMm * scale, leastThickness);
        const f = Math.max(flangeThicknessMm * scale, leastThickness);
        return [[[0, 0], [w, 0], [w, h], [w - f, h], [w - f, web], [f, web], [f, h], [0, h]]]; // prettier-ignore
      },
      size(depthMm),
      'flanges down',
    );
  return drawn(
    { lyingMm: flangeWidthMm, downMm: depthMm },
    (scale) => {
      const [w, h] = [flangeWidthMm * scale, depthMm * scale];
      const web = Math.max(webThicknessMm * scale, leastThickness);
      const f = Math.max(flangeThicknessMm * scale, leastThickness);
      return [[[0, 0], [w, 0], [w, f], [web, f], [web, h - f], [w, h - f], [w, h], [0, h]]]; // prettier-ignore
    },
    size(flangeWidthMm),
    'web down',
  );
}

type Corner = [number, number];

function drawn(
  { lyingMm, downMm }: { lyingMm: number; downMm: number },
  outlines: (scale: number) => Corner[][],
  above: string,
  words: string,
): EndView {
  const scale = room / Math.max(lyingMm, downMm);
  const width = Math.max(room + 12, labelWidth(words), labelWidth(above));
  const left = (width - lyingMm * scale) / 2;
  const height = top + downMm * scale + 22;
  const shapes: Shape[] = [
    ...outlines(scale).map((corners): Shape => {
      const path = polygon(corners.map(([x, y]): Corner => [left + x, top + y]));
      return { kind: 'area', path, fill: 'hatch', line: 'outline' };
    }),
    { kind: 'text', x: width / 2, y: top - 6, text: above, anchor: 'middle' },
    { kind: 'text', x: width / 2, y: height - 5, text: words, anchor: 'middle', strong: true },
  ];
  return { width, height, shapes, words };
}
