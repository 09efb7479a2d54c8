import { gaugeCount as countOf } from '../../core/setup/gaugeSteps.js';
import { define } from '../descriptor/descriptor.js';
import { gaugeArguments, gaugesOf, gaugeSource } from './gaugeArguments.js';

export const gaugeCount = define({
  name: 'GAUGECOUNT',
  purpose: 'How many settings of fence and stop the holes of a plate take, at least',
  arguments: gaugeArguments,
  result: 'count',
  gives:
    'The number of settings; as text, "2 settings and 3 holes to mark out by hand", where fence and stops do not reach all holes.',
  errors: '#VALUE! for holes that are off the plate, and for two at one place.',
  source: gaugeSource,
  example: '=TONROW.GAUGECOUNT({2,2;10,2;2,8;10,8},12,10)',
  compute(call, { unit }, working) {
    return countOf(gaugesOf(call, unit, working)).value;
  },
});
