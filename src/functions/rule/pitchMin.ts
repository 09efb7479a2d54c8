import { leastPitchMm } from '../../core/rule/pitch.js';
import { setting } from '../../core/shop/setting.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { boltArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';
import { edgeCodeArgument } from './edgeMin.js';

export const pitchMin = define({
  name: 'PITCHMIN',
  purpose: 'Least distance between the centers of two bolt holes in a line',
  arguments: { bolt: boltArgument(), shop: shopOrUnitArgument, code: edgeCodeArgument },
  result: 'length',
  gives: 'Distance from center to center, in or mm.',
  errors: '#N/A under EN for a bolt that stands in no row of its hole table.',
  source: 'AISC 360-22 J3.4; EN 1993-1-8 Table 3.3; CSA S16, AS 4100 (from memory)',
  example: '=TONROW.PITCHMIN("3/4")',
  compute({ bolt, shop, code }, _context, working) {
    return leastPitchMm({ bolt, code: code ?? setting(shop, 'edgeCode') }, working);
  },
});
