/** The columns a row check reads. Those of a hole group may stand again as `Hole 2`, `Edge 2` … */
export const rowFields = [
  { key: 'mark', name: 'Mark', synonyms: ['piece mark', 'part mark', 'part', 'piece', 'item'] },
  { key: 'drawing', name: 'Drawing', synonyms: ['dwg', 'drawing no'] },
  { key: 'revision', name: 'Revision', synonyms: ['rev', 'rev no'] },
  { key: 'qty', name: 'Qty', synonyms: ['quantity', 'pcs', 'pieces', 'no of pieces'] },
  { key: 'section', name: 'Section', synonyms: ['profile', 'shape'] },
  { key: 'size', name: 'Size', synonyms: ['section size', 'dimensions', 'dims'] },
  {
    key: 'grade',
    name: 'Grade',
    synonyms: ['material', 'steel', 'steel grade', 'material grade'],
  },
  { key: 'length', name: 'Length', synonyms: ['cut length', 'len'] },
  { key: 'thickness', name: 'Thickness', synonyms: ['thk', 'thick', 'thkns'] },
  { key: 'width', name: 'Width', synonyms: ['wd', 'wide', 'wdth'] },
  { key: 'feet', name: 'Feet', synonyms: ['ft', 'length feet'] },
  { key: 'inches', name: 'Inches', synonyms: ['inch', 'length inches'] },
  {
    key: 'miterLeft',
    name: 'Miter left',
    synonyms: ['mitre left', 'miter l', 'left miter'],
  },
  {
    key: 'miterRight',
    name: 'Miter right',
    synonyms: ['mitre right', 'miter r', 'right miter'],
  },
  {
    key: 'miter',
    name: 'Miter',
    synonyms: ['mitre', 'miters', 'mitres', 'miter angle', 'mitre angle'],
  },
  { key: 'cornerClip', name: 'Corner clip', synonyms: ['clip size'] },
  { key: 'corners', name: 'Corners', synonyms: ['clipped corners'] },
  { key: 'notchWidth', name: 'Notch width', synonyms: [] },
  { key: 'notchDepth', name: 'Notch depth', synonyms: [] },
  { key: 'notches', name: 'Notches', synonyms: ['no of notches'] },
  { key: 'bendLength', name: 'Bend length', synonyms: [] },
  { key: 'bends', name: 'Bends', synonyms: ['no of bends'] },
  {
    key: 'finish',
    name: 'Finish',
    synonyms: ['coating', 'galvanized', 'galvanised', 'galvanize', 'galv', 'hdg'],
  },
  { key: 'notchAt', name: 'Notch at', synonyms: ['notch place', 'notch location'] },
  { key: 'clipAt', name: 'Clip at', synonyms: ['clip place', 'clip location'] },
  { key: 'bendAt', name: 'Bend at', synonyms: ['bend place', 'bend location', 'bend line'] },
  { key: 'longSide', name: 'Long side', synonyms: ['long point', 'long edge'] },
  { key: 'miterLeg', name: 'Miter leg', synonyms: ['mitre leg', 'mitered leg'] },
  { key: 'cutBy', name: 'Cut by', synonyms: ['cutting', 'cut process'] },
  { key: 'press', name: 'Press', synonyms: ['machine', 'm/c'] },
] as const;

export const groupFields = [
  { key: 'hole', name: 'Hole', synonyms: ['hole size', 'hole dia', 'hole diameter', 'dia of hole'] },
  {
    key: 'holes',
    name: 'Holes',
    synonyms: ['hole qty', 'qty holes', 'no holes', 'no of holes', 'number of holes', 'hole count'],
  },
  { key: 'bolt', name: 'Bolt', synonyms: ['bolt size', 'bolt dia', 'bolt diameter'] },
  { key: 'edge', name: 'Edge', synonyms: ['edge distance', 'edge dist', 'side distance'] },
  { key: 'end', name: 'End', synonyms: ['end distance', 'end dist'] },
  { key: 'edgeKind', name: 'Edge kind', synonyms: ['edge type', 'edge cut', 'edge condition'] },
  { key: 'pitch', name: 'Pitch', synonyms: ['spacing', 'hole spacing', 'hole pitch'] },
  { key: 'p2', name: 'p2', synonyms: [] },
  { key: 'p3', name: 'p3', synonyms: [] },
  { key: 'p4', name: 'p4', synonyms: [] },
  { key: 'gage', name: 'Gage', synonyms: ['gauge', 'gage line', 'gol'] },
  { key: 'leg', name: 'Leg', synonyms: ['face'] },
  { key: 'endKind', name: 'End kind', synonyms: ['end type', 'end cut', 'end condition'] },
  { key: 'slot', name: 'Slot', synonyms: ['slot direction', 'slots'] },
  { key: 'holesAt', name: 'Holes at', synonyms: ['hole locations', 'hole positions'] },
  { key: 'holesBy', name: 'Holes by', synonyms: ['hole process'] },
] as const;

export type RowField = (typeof rowFields)[number]['key'];
export type GroupField = (typeof groupFields)[number]['key'];
