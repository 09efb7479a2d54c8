import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import { listWords } from '../../core/say/listWords.js';
import { turnWords } from '../../core/say/turnWords.js';
import type { GaugeHit, GaugeSetting } from '../../core/setup/gaugeSetting.js';
import { endAtStop, type Turn } from '../../core/setup/way.js';
import { define } from '../descriptor/descriptor.js';
import { gaugeArguments, gaugesOf, gaugeSource } from './gaugeArguments.js';

const headings = ['Setting', 'Stop', 'Fence', 'Hits', 'Way round', 'Stop side'];

export const gaugeSettings = define({
  name: 'GAUGESETTINGS',
  purpose: 'The fewest settings of fence and stop for the holes of a plate, in an order of short moves',
  arguments: gaugeArguments,
  result: 'cells',
  gives:
    'A heading row, then for each setting its number, stop and fence in in or mm from the punch center, holes, how the plate lies for which row of the holes, and the side of the stop. Holes out of reach come last, to be marked out.',
  errors: '#VALUE! for holes that are off the plate, and for two at one place.',
  source: gaugeSource,
  example: '=TONROW.GAUGESETTINGS({2,2;10,2;2,8;10,8},12,10)',
  compute(call, { unit }, working) {
    const { settings, marked } = gaugesOf(call, unit, working);
    const rowOf = (hole: number) => call.holes[hole]?.row ?? hole + 1;
    const size = (mm: number) => inShopUnit(mm, 'length', unit);
    const rows = settings.map((setting, at): CellValue[] => [
      at + 1,
      size(setting.stopMm),
      size(setting.fenceMm),
      setting.hits.length,
      waysRound(setting, rowOf),
      setting.stop,
    ]);
    if (marked.length === 0) return [headings, ...rows];
    const beyond = `out of reach: ${rowWords(marked.map(rowOf))}`;
    return [headings, ...rows, ['mark out', '', '', marked.length, beyond, '']];
  },
});

/** How the plate lies for which holes: `as it lies, row 1; turned end for end, row 4`. */
function waysRound({ hits, stop }: GaugeSetting, rowOf: (hole: number) => number): string {
  const turns = (Object.keys(turnWords) as Turn[]).filter((each) => hits.some(({ turn }) => turn === each));
  return turns
    .map((turn) => {
      const end = stop === 'right' ? `, ${endAtStop({ turn, stop })} end at the stop` : '';
      return `${turnWords[turn]}${end}, ${rowWords(rowsOf(hits, turn, rowOf))}`;
    })
    .join('; ');
}

function rowsOf(hits: readonly GaugeHit[], turn: Turn, rowOf: (hole: number) => number): number[] {
  return hits.filter((hit) => hit.turn === turn).map(({ hole }) => rowOf(hole));
}

function rowWords(rows: readonly number[]): string {
  return `${rows.length === 1 ? 'row' : 'rows'} ${listWords(rows.map(String))}`;
}
