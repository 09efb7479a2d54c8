import type { Grade } from '../../core/material/grade.js';
import { type PlacedHoles } from '../../core/row/checkOnPress.js';
import { prepareRow } from '../../core/row/prepareRow.js';
import type { RowJob } from '../../core/row/rowJob.js';
import type { RowResult } from '../../core/row/rowResult.js';
import type { Shop } from '../../core/shop/readShop.js';
import { describeHole } from '../../core/tooling/hole.js';
import type { SelectedHole } from '../drawing/capacity/selectedHole.js';

/** The punched hole of a row that its verdict is about, else the first; undefined where nothing is punched. */
export function selectedOfRow(
  job: RowJob,
  { findings }: Extract<RowResult, { blank: false }>,
  shop: Shop,
): { selected: SelectedHole; grade: Grade } | undefined {
  const { section, grade } = job;
  if (!section || !grade) return undefined;
  const { places } = prepareRow({ ...job, section, grade }, shop, false).row;
  const punched = places.filter(({ process }) => process.made !== 'drill');
  const [worst] = findings;
  const meant = ({ group, process }: PlacedHoles) =>
    worst !== undefined &&
    (worst.note.startsWith(`${group.title}:`) ||
      worst.governs.endsWith(`, ${describeHole(process.punched, shop.unit)}`));
  const chosen = punched.find(meant) ?? punched[0];
  return (
    chosen && {
      selected: { hole: chosen.process.punched, thicknessMm: chosen.place.thicknessMm },
      grade,
    }
  );
}
