import {
  type EdgeCode,
  type EdgeFit,
  type EdgeKind,
  leastEdgeDistanceMm,
} from '../../core/rule/edgeDistance.js';
import { setting } from '../../core/shop/setting.js';
import type { Choice } from '../argument/argument.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { boltArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

const edges: readonly (Choice & { value: EdgeKind })[] = [
  { value: 'sheared', meaning: 'cut by a shear: ends of parts, edges of sheared plate' },
  { value: 'machine cut', meaning: 'sawn or machine gas-cut' },
  { value: 'rolled', meaning: 'long edges and toes of rolled bars and shapes' },
  {
    value: 'sheared connection end',
    meaning: 'sheared end of a beam connection angle or shear end plate: 1-1/4 in for 7/8 and 1 in bolts',
  },
];

const codes: readonly (Choice & { value: EdgeCode })[] = [
  { value: 'AISC', meaning: 'AISC 360-22; at sheared edges the larger values of AISC 360-05' },
  { value: 'AISC 360-22', meaning: 'AISC 360-22 Table J3.4 for every kind of edge' },
  { value: 'EN', meaning: 'EN 1993-1-8 Table 3.3' },
  { value: 'CSA', meaning: 'CSA S16' },
  { value: 'AS', meaning: 'AS 4100' },
];

const fits: readonly (Choice & { value: EdgeFit })[] = [
  { value: 'standard', meaning: 'standard hole' },
  { value: 'oversize', meaning: 'oversize hole' },
  { value: 'short slot', meaning: 'short slot, its length towards the edge' },
  { value: 'long slot', meaning: 'long slot, its length towards the edge' },
  { value: 'short slot along', meaning: 'short slot, its length along the edge' },
  { value: 'long slot along', meaning: 'long slot, its length along the edge' },
];

/** The code of edge distance and pitch. */
export const edgeCodeArgument = optionalChoiceArgument(
  'The code; the setting of the shop when left out',
  codes,
  'the setting of the shop, else AISC',
);

export const edgeMin = define({
  name: 'EDGEMIN',
  purpose: 'Least distance from the center of a bolt hole to an edge',
  arguments: {
    bolt: boltArgument(),
    shop: shopOrUnitArgument,
    edge: optionalChoiceArgument('How the edge was made', edges, 'sheared'),
    code: edgeCodeArgument,
    fit: optionalChoiceArgument('The fit of the hole', fits, 'standard'),
  },
  result: 'length',
  gives: 'Distance from the center of the hole to the edge, in or mm.',
  errors: '#N/A for a bolt that stands in no row of the table of the code.',
  source:
    'AISC 360-22 Tables J3.4, J3.5; AISC 360-05 (sheared edges); EN 1993-1-8 Table 3.3; CSA S16, AS 4100 (from memory)',
  example: '=TONROW.EDGEMIN("3/4","in","rolled")',
  compute({ bolt, shop, edge, code, fit }, _context, working) {
    const input = {
      bolt,
      edge: edge ?? 'sheared',
      code: code ?? setting(shop, 'edgeCode'),
      fit: fit ?? 'standard',
    };
    return leastEdgeDistanceMm(input, working);
  },
});
