import type { BackGaugeCuts, GaugeCut } from '../cut/backGaugeCuts.js';
import type { LengthUnit } from '../quantity/units.js';
import { listWords } from './listWords.js';
import { gapWords } from './pieceWords.js';
import { size } from './sizes.js';

/** Where the back gauge is set for a cut, or what leaves it open. */
export function gaugeSettingWords({ setting }: GaugeCut, unit: LengthUnit): string {
  return 'mm' in setting ? size(setting.mm, unit) : gapWords(setting.gap);
}

const starts: Record<GaugeCut['starts'], string> = {
  touch: 'touching the stop starts the stroke',
  pedal: 'pedal',
  unknown: 'not known: Back gauge starts the stroke is blank or cannot be read',
};

/** What starts the stroke of a cut. */
export function strokeStartWords(cut: GaugeCut): string {
  return starts[cut.starts];
}

/** Names the cuts that the back gauge does not reach; undefined where it reaches all. */
export function overReachSentence(cuts: BackGaugeCuts, unit: LengthUnit): string | undefined {
  const { press, reachMm, sections } = cuts;
  const over = sections.flatMap((section) => section.cuts.filter(({ reach }) => reach === 'over'));
  if (over.length === 0 || reachMm === undefined) return undefined;
  const named = over.map(({ pieces, lengthMm }) => {
    const marks = listWords(pieces.map(({ mark }) => mark).filter((mark) => mark !== ''));
    return marks === '' ? size(lengthMm, unit) : `${marks} (${size(lengthMm, unit)})`;
  });
  return `Over the back gauge of ${press}, which reaches ${size(reachMm, unit)}: ${named.join(', ')}. Mark these out.`;
}

/** Names the rows of the press that are not cut as they stand, each with its word; undefined where there are none. */
export function leftOutSentence({ left }: BackGaugeCuts): string | undefined {
  if (left.length === 0) return undefined;
  const named = left.map(
    ({ mark, verdict }) => `${mark === '' ? 'a row without a mark' : mark} (${verdict})`,
  );
  return `Not cut as they stand: ${named.join(', ')}.`;
}
