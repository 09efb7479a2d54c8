import type { Grade } from '../../core/material/grade.js';
import { prepareRow } from '../../core/row/prepareRow.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import type { CheckedRow } from '../../core/row/rowResult.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { SelectedHole } from '../../drawing/capacity/selectedHole.js';

/** The punched hole of a row that its verdict is about, else the first; undefined where nothing is punched. */
export function selectedOfRow(
  job: RowJob,
  { findings }: CheckedRow,
  shop: Shop,
): { selected: SelectedHole; grade: Grade } | undefined {
  const { section, grade } = job;
  if (!section || !grade) return undefined;
  const { places } = prepareRow({ ...job, section, grade }, shop, false).row;
  const punched = places.flatMap(({ faces }) => faces).filter(({ process }) => process.made !== 'drill');
  const chosen = punched.find((placed) => placed.index === findings[0]?.group) ?? punched[0];
  return (
    chosen && {
      selected: { hole: chosen.process.punched, thicknessMm: chosen.thicknessMm },
      grade,
    }
  );
}
