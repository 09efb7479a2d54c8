import type { PressItem } from './pressItem.js';

/** What a blank shortest piece stands for, as `leastPieceMm` has it. */
const ofThickness = 'twice the thickness or size, at least 25 mm (about 1 in),';
const usualPiece = { in: ofThickness, mm: ofThickness };

/** The rows of the Presses table about the three shears, as `pressItems` has them. */
export const shearItems = [
  {
    key: 'shearStroke',
    name: 'Shear stroke',
    kind: 'length',
    meaning: 'full travel of the shear blades',
  },
  {
    key: 'bladeMaterialLimit',
    name: 'Blade material limit',
    kind: 'stress',
    meaning: 'highest tensile strength the shear blades may cut, as their maker says',
    whenBlank: { in: 'none', mm: 'none' },
  },
  {
    key: 'flatShear',
    name: 'Flat shear',
    kind: 'station',
    meaning: 'whether the press has a flat-bar shear: yes or no',
  },
  {
    key: 'flatShearBladeLength',
    name: 'Flat shear blade length',
    kind: 'length',
    meaning: 'length of the blade',
  },
  { key: 'flatShearRake', name: 'Flat shear rake', kind: 'angle', meaning: 'angle of the moving blade' },
  {
    key: 'flatShearDullBlade',
    name: 'Flat shear dull-blade allowance',
    kind: 'allowance',
    meaning: 'multiplies the force against Shear force',
    whenBlank: { in: '1.2', mm: '1.2' },
  },
  {
    key: 'flatShearWidestBar',
    name: 'Flat shear widest bar',
    kind: 'length',
    meaning: 'widest bar on the plate',
  },
  {
    key: 'flatShearWidestBarThickness',
    name: 'Flat shear widest bar thickness',
    kind: 'length',
    meaning: 'thickness of that bar',
  },
  {
    key: 'flatShearThickestBar',
    name: 'Flat shear thickest bar',
    kind: 'length',
    meaning: 'thickest bar on the plate',
  },
  {
    key: 'flatShearThickestBarWidth',
    name: 'Flat shear thickest bar width',
    kind: 'length',
    meaning: 'width of that bar',
  },
  {
    key: 'flatShearShortestPiece',
    name: 'Flat shear shortest piece',
    kind: 'length',
    meaning: 'shortest piece that can be held and cut',
    whenBlank: usualPiece,
  },
  {
    key: 'flatShearNarrowestBar',
    name: 'Flat shear narrowest bar',
    kind: 'length',
    meaning: 'narrowest bar that the hold-down holds',
    whenBlank: { in: 'about 1/2 in', mm: '12 mm' },
  },
  {
    key: 'flatShearThinnestBar',
    name: 'Flat shear thinnest bar',
    kind: 'length',
    meaning: 'thinnest bar that is cut and not folded into the blade gap',
    whenBlank: { in: 'about 1/16 in', mm: '1.5 mm' },
  },
  {
    key: 'angleShear',
    name: 'Angle shear',
    kind: 'station',
    meaning: 'whether the press has an angle shear: yes or no',
  },
  {
    key: 'angleShearLegSquare',
    name: 'Angle shear leg square',
    kind: 'length',
    meaning: 'longest leg, square cut',
  },
  {
    key: 'angleShearThicknessSquare',
    name: 'Angle shear thickness square',
    kind: 'length',
    meaning: 'thickness of that angle',
  },
  {
    key: 'angleShearLeg45',
    name: 'Angle shear leg at 45°',
    kind: 'length',
    meaning: 'longest leg, cut at 45°',
  },
  {
    key: 'angleShearThickness45',
    name: 'Angle shear thickness at 45°',
    kind: 'length',
    meaning: 'thickness of that angle',
  },
  {
    key: 'angleShearLegsMitered',
    name: 'Angle shear legs mitered',
    kind: 'legs',
    meaning: 'legs that can be mitered: one, both or no',
  },
  {
    key: 'angleShearLegPosition',
    name: 'Angle shear leg position',
    kind: 'legPosition',
    meaning:
      'how the other leg lies while a leg is mitered: down makes right-hand miters, up left-hand ones; or both',
  },
  {
    key: 'angleShearSlug',
    name: 'Angle shear slug',
    kind: 'length',
    meaning: 'steel lost at each cut by a shear that cuts twice; none for a single blade',
  },
  {
    key: 'angleShearShortestPiece',
    name: 'Angle shear shortest piece',
    kind: 'length',
    meaning: 'shortest piece of angle that can be held and cut',
    whenBlank: usualPiece,
  },
  {
    key: 'angleShearSmallestLeg',
    name: 'Angle shear smallest leg',
    kind: 'length',
    meaning: 'shortest leg that the hold-down holds',
    whenBlank: { in: 'about 1 in', mm: '25 mm' },
  },
  {
    key: 'barShear',
    name: 'Bar shear',
    kind: 'station',
    meaning: 'whether the press has a round and square bar shear: yes or no',
  },
  { key: 'barShearRound', name: 'Bar shear round', kind: 'length', meaning: 'largest round bar' },
  { key: 'barShearSquare', name: 'Bar shear square', kind: 'length', meaning: 'largest square bar' },
  {
    key: 'barShearShortestPiece',
    name: 'Bar shear shortest piece',
    kind: 'length',
    meaning: 'shortest piece of bar that can be held and cut',
    whenBlank: usualPiece,
  },
  {
    key: 'barShearSmallestSize',
    name: 'Bar shear smallest size',
    kind: 'length',
    meaning: 'smallest round or square bar that the hold-down holds',
    whenBlank: { in: 'about 1/4 in', mm: '6 mm' },
  },
] as const satisfies readonly PressItem[];
