import type { PressItemKey } from '../../../../core/press/item/pressItem.js';
import { ellipse, polygon, rectangle, segment } from '../../../../drawing/path.js';

type Anchor = 'start' | 'middle' | 'end';

/** A dimension of a station: which values it is, where it runs, and its word. */
export interface SketchDimension {
  keys: readonly PressItemKey[];
  path: string;
  label: { x: number; y: number; text: string; anchor: Anchor };
}

/** A station drawn for its form: the press, the steel in it, and what each number measures. Not to scale. */
export interface Sketch {
  title: string;
  height: number;
  press: readonly string[];
  steel: readonly string[];
  dimensions: readonly SketchDimension[];
}

export const sketchWidth = 280;
const tick = 4;

function across(
  keys: readonly PressItemKey[],
  [from, to, y]: readonly [number, number, number],
  text: string,
  at: readonly [number, number, Anchor],
): SketchDimension {
  const ends = [from, to].map((x) => segment(x, y - tick, x, y + tick)).join('');
  return { keys, path: segment(from, y, to, y) + ends, label: labelAt(text, at) };
}

function upright(
  keys: readonly PressItemKey[],
  [x, from, to]: readonly [number, number, number],
  text: string,
  at: readonly [number, number, Anchor],
): SketchDimension {
  const ends = [from, to].map((y) => segment(x - tick, y, x + tick, y)).join('');
  return { keys, path: segment(x, from, x, to) + ends, label: labelAt(text, at) };
}

const labelAt = (text: string, [x, y, anchor]: readonly [number, number, Anchor]) => ({ x, y, text, anchor });

const punch: Sketch = {
  title: 'The punch from the side',
  height: 186,
  press: [
    polygon([
      [60, 10],
      [272, 10],
      [272, 178],
      [40, 178],
      [40, 156],
      [226, 156],
      [226, 38],
      [60, 38],
    ]),
    rectangle(106, 38, 28, 26),
    rectangle(112, 64, 16, 20),
    rectangle(92, 110, 20, 18),
    rectangle(128, 110, 20, 18),
  ],
  steel: [rectangle(62, 99, 132, 11)],
  dimensions: [
    across(['punchThroat'], [120, 226, 52], 'throat', [184, 67, 'middle']),
    across(['punchBody'], [106, 134, 58], 'body', [100, 56, 'end']),
    across(['punchLargestHole'], [112, 128, 78], 'hole', [106, 76, 'end']),
    upright(['punchWorkingGap'], [144, 84, 99], 'gap', [152, 94, 'start']),
    upright(['punchLargestHoleThickness'], [204, 99, 110], 'thickness', [222, 124, 'end']),
    upright(['punchStroke'], [50, 58, 99], 'stroke', [44, 82, 'end']),
    across(['punchDieHalfWidth'], [120, 148, 136], 'half width', [154, 146, 'start']),
    upright(['punchClearUnderDie'], [80, 128, 156], 'clear', [74, 146, 'end']),
  ],
};

const flatShear: Sketch = {
  title: 'The flat shear from the front',
  height: 168,
  press: [
    polygon([
      [20, 20],
      [260, 20],
      [260, 44],
      [20, 74],
    ]),
    rectangle(20, 94, 240, 22),
  ],
  steel: [rectangle(64, 80, 130, 14)],
  dimensions: [
    {
      keys: ['flatShearRake'],
      path: `${segment(20, 74, 130, 74)}${segment(20, 74, 130, 60.25)}`,
      label: labelAt('rake', [24, 90, 'start']),
    },
    upright(['flatShearWidestBarThickness', 'flatShearThickestBar'], [204, 80, 94], 'thickness', [
      210,
      76,
      'start',
    ]),
    across(['flatShearWidestBar', 'flatShearThickestBarWidth'], [64, 194, 128], 'width of the bar', [
      129,
      142,
      'middle',
    ]),
    across(['flatShearBladeLength'], [20, 260, 150], 'blade length', [140, 165, 'middle']),
  ],
};

const angleShear: Sketch = {
  title: 'An angle from its end, cut square; and from above, cut at 45°',
  height: 156,
  press: [],
  steel: [
    polygon([
      [40, 22],
      [52, 22],
      [52, 90],
      [120, 90],
      [120, 102],
      [40, 102],
    ]),
    polygon([
      [170, 42],
      [262, 42],
      [202, 102],
      [170, 102],
    ]),
  ],
  dimensions: [
    across(['angleShearLegSquare'], [40, 120, 116], 'leg, square', [80, 130, 'middle']),
    across(['angleShearThicknessSquare'], [40, 52, 14], 'thickness', [60, 18, 'start']),
    upright(['angleShearLeg45', 'angleShearThickness45'], [160, 42, 102], 'leg, 45°', [154, 76, 'end']),
    {
      keys: ['angleShearLegsMitered', 'angleShearLegPosition'],
      path: segment(262, 42, 202, 102),
      label: labelAt('miter', [244, 82, 'start']),
    },
    {
      keys: ['angleShearSlug'],
      path: `${segment(268, 42, 208, 102)}${segment(262, 42, 202, 102)}`,
      label: labelAt('slug', [214, 116, 'start']),
    },
  ],
};

const barShear: Sketch = {
  title: 'A round and a square bar from the end',
  height: 118,
  press: [],
  steel: [ellipse(80, 50, 34), rectangle(166, 18, 64, 64)],
  dimensions: [
    across(['barShearRound'], [46, 114, 94], 'round', [80, 110, 'middle']),
    across(['barShearSquare'], [166, 230, 94], 'square', [198, 110, 'middle']),
  ],
};

const notcher: Sketch = {
  title: 'A notch from above, and the plate from its edge',
  height: 138,
  press: [],
  steel: [
    polygon([
      [20, 14],
      [200, 14],
      [200, 90],
      [134, 90],
      [134, 46],
      [76, 46],
      [76, 90],
      [20, 90],
    ]),
    rectangle(226, 14, 12, 76),
  ],
  dimensions: [
    across(['notcherWidth', 'notcherNarrowest'], [76, 134, 104], 'width', [105, 119, 'middle']),
    upright(['notcherDepth'], [146, 46, 90], 'depth', [152, 72, 'start']),
    across(['notcherThickness'], [226, 238, 104], 'thickness', [232, 119, 'middle']),
  ],
};

const bend: Sketch = {
  title: 'A bend from its end, and along its line',
  height: 170,
  press: [
    polygon([
      [30, 76],
      [60, 76],
      [96, 118],
      [132, 76],
      [162, 76],
      [162, 136],
      [30, 136],
    ]),
    polygon([
      [82, 14],
      [110, 14],
      [110, 78],
      [96, 96],
      [82, 78],
    ]),
  ],
  steel: [
    polygon([
      [42, 56],
      [96, 112],
      [150, 56],
      [144, 50],
      [96, 100],
      [48, 50],
    ]),
    rectangle(196, 70, 70, 22),
  ],
  dimensions: [
    across(['bendVeeOpenings'], [60, 132, 148], 'V opening', [96, 164, 'middle']),
    across(['bendPunchHalfWidth'], [96, 110, 30], 'punch half width', [118, 34, 'start']),
    across(['bendLength'], [196, 266, 104], 'length', [231, 119, 'middle']),
  ],
};

/** The sketches by the item that says whether the press has the station. */
export const sketches: Readonly<Partial<Record<PressItemKey, Sketch>>> = {
  punch,
  flatShear,
  angleShear,
  barShear,
  notcher,
  bend,
};
