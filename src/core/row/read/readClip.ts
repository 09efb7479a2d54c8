import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { readLength } from '../../quantity/readLength.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { CornerClips } from '../job/rowJob.js';
import { withLastUnit } from './listItems.js';

const allowed = 'Write 1 or 3/4x1-1/2.';
const at45 = / ?[x@] ?45 ?(?:°|º|degrees|degree|deg\.?)$/;
const bare45 = /x ?45$/;

/**
 * Reads the size of a corner cut off: `1`, both ways alike, also as `1 x 45°`; `3/4x1-1/2`, along the length first. A
 * unit behind the last size holds for both. Throws `invalid` for what is no clip, and for `1x45`, which may be an angle
 * or a length. Source: common practice, no source.
 */
export function readClip(
  value: CellValue,
  argument: string,
  unit: LengthUnit,
): Pick<CornerClips, 'alongMm' | 'acrossMm'> {
  const read = (side: CellValue) => readLength(side, argument, unit, 'width');
  if (typeof value !== 'string') return { alongMm: read(value), acrossMm: read(value) };
  const text = tradeText(value);
  const equal = at45.test(text);
  const sides = withLastUnit(
    text
      .replace(at45, '')
      .split('x')
      .map((side) => side.trim()),
  );
  const [along = '', across = along] = sides;
  if (sides.length > 2 || sides.includes('') || (equal && sides.length > 1)) {
    return refuse(argument, value, `${quoted(value)} is not a corner clip.`, allowed);
  }
  if (bare45.test(text)) {
    const problem = `${quoted(value)} may be ${along} at 45° or ${along} by 45 ${unit}.`;
    return refuse(argument, value, problem, `Write ${along} for 45°, or ${along}x45 ${unit}.`);
  }
  return { alongMm: read(along), acrossMm: read(across) };
}
