import { nameKey } from '../../../core/shop/table.js';

/** Headings of parts lists that are usual but too short or too loose to be read without a look: common practice. */
const usual: Readonly<Record<string, readonly string[]>> = {
  Mark: ['mk', 'mk no', 'mark no', 'pc mk', 'pc no', 'pce mark', 'pos', 'position', 'ref no'],
  Qty: [
    ...['no reqd', 'no req', 'no required', 'number required', 'number reqd', 'reqd', 'req', 'required'],
    ...['req qty', 'reqd qty', 'total qty', 'qnty', 'qnt', 'quan', 'quant'],
    ...['no off', 'number off', 'off', 'nos', 'no pcs', 'no of pcs', 'pc count', 'each', 'ea'],
  ],
  Width: ['w', 'breadth'],
  Thickness: ['t', 'wall'],
  Length: [
    'l',
    'lg',
    'lgth',
    'lngth',
    'lth',
    'lgt',
    'cut lg',
    'cut lgth',
    'cut len',
    'oal',
    'overall length',
  ],
  Section: ['sect size', 'sec', 'member', 'member size', 'material size', 'matl size'],
  Grade: ['gr', 'matl grade', 'matl gr', 'mat grade', 'steel spec', 'material spec', 'matl spec'],
  Hole: [
    'dia',
    'diam',
    'drill/punch',
    'drill',
    'punch',
    'punch size',
    'ø hole',
    'dia of hole',
    'dia of holes',
    'holes dia',
    'punch dia',
    'ø',
    ...['holes size', 'loch durchmesser', 'loch durchm', 'bohrung durchmesser', 'bohrung durchm'],
  ],
  Holes: [
    ...['no holes', 'qty holes', 'qty of holes', '# holes', '# of holes', 'holes no', 'holes each'],
    ...['hole no', 'hole nos', 'hole number', 'hole quantity', 'hole pcs', 'hole #'],
    ...['holes quantity', 'holes qty', 'holes pcs', 'holes #'],
    ...['bohrung anzahl', 'bohrung anz', 'bohrung stk', 'bohrungen anzahl', 'bohrungen anz'],
    ...['loch anzahl', 'loch anz', 'löcher anzahl', 'gat aantal', 'gaten aantal', 'trou nb', 'trous nb'],
    'agujeros cant',
  ],
  Edge: ['e d', 'edge dist', 'e dist', 'ed', 'randabstand', 'pince', 'distancia al borde'],
  End: ['end dist', 'e e d'],
  'Miter left': ['mtr', 'miter', 'mitre', 'mtr angle', 'gehrung', 'inglete'],
  Bolt: ['bolts', 'bolt dia', 'dia of bolt', 'dia of bolts', 'bolt ø', 'bolts dia'],
  Pitch: ['c/c', 'ctrs', 'centers', 'centres', 'c to c'],
};

const fields = new Map(Object.entries(usual).flatMap(([field, texts]) => texts.map((text) => [text, field])));

/** The input that a heading usually stands for, whatever its dots and apostrophes: `No. Req’d`, `Lgth`, `No. off`. */
export function usualHeading(heading: string): string | undefined {
  const key = nameKey(heading)
    .replaceAll(/[.'’‘´`]/g, ' ')
    .replaceAll(/\breq d\b/g, 'reqd')
    .replaceAll(/\bmat l\b/g, 'matl')
    .replaceAll(/\s+/g, ' ')
    .trim();
  return fields.get(key);
}
