import { formatNumber } from '../../core/quantity/formatLength.js';
import { type LengthUnit, radianPerDegree } from '../../core/quantity/units.js';
import { barLength } from '../../core/say/barLength.js';
import { notNestedWords } from '../../core/stock/list/planWords.js';
import type { JobPart, StockJob } from '../../core/stock/list/stockJob.js';
import type { FactTable } from '../../drawing/drawing.js';
import { FactTableView } from '../drawing/FactTableView.js';
import { counted } from '../shared/change/describeStep.js';
import { shortText } from '../shared/shortText.js';
import { jobName } from './jobName.js';

/** So many parts are shown; a list may have thousands. */
const mostShown = 200;

/** The parts of a section, to look through. */
export function PartsOfJob({ job, unit }: { job: StockJob; unit: LengthUnit }) {
  const { parts } = job;
  const pieces = parts.reduce((sum, part) => sum + part.pieces, 0);
  const name = `${counted(pieces, 'piece')} of ${counted(parts.length, 'mark')}`;
  return (
    <details>
      <summary style={{ cursor: 'pointer', padding: '2px 0' }}>{name}</summary>
      <FactTableView table={tableOf(parts.slice(0, mostShown), unit)} caption={`Parts of ${jobName(job)}`} />
      {parts.length > mostShown && <span>and {counted(parts.length - mostShown, 'mark')} more.</span>}
    </details>
  );
}

function tableOf(parts: readonly JobPart[], unit: LengthUnit): FactTable {
  const degrees = (rad: number) =>
    rad === 0 ? 'square' : `${formatNumber(Math.abs(rad) / radianPerDegree, 1)}°`;
  const ends = ({ miterLeftRad, miterRightRad, notNested }: JobPart) => {
    if (miterLeftRad === 0 && miterRightRad === 0) return 'square';
    const both = `${degrees(miterLeftRad)} left, ${degrees(miterRightRad)} right`;
    return notNested === undefined ? both : `${both}, ${notNestedWords(notNested)}`;
  };
  return {
    headings: ['Mark', 'Pieces', 'Length', 'Ends', 'Verdict'],
    rows: parts.map((part) => [
      part.mark === '' ? 'no mark' : shortText(part.mark, 40),
      part.pieces.toLocaleString('en'),
      barLength(part.longMm, unit),
      ends(part),
      part.verdict,
    ]),
  };
}
