import type { Reading } from '../job/reading.js';
import { plainText } from '../../quantity/cellValue.js';
import type { Headings } from '../headings/readHeadings.js';
import type { RowJob } from '../job/rowJob.js';
import type { RowReader } from '../headings/rowReader.js';
import { readFinishUnder } from './readFinish.js';
import { type Mitered, readLongSide, readMiterLeg } from './readMiterSides.js';
import { readCutBy } from './readProcess.js';

export type Making = Pick<RowJob, 'longSide' | 'miterLeg' | 'cutBy' | 'galvanized'>;

/** How a part is cut and finished: its finish, what cuts it, and how its miters lie. */
export function readMaking(
  reader: RowReader,
  { fields }: Headings,
  mitered: Mitered,
  readings: Reading[],
): Making {
  const longSide = reader.read(fields.longSide, (value, argument) => readLongSide(value, argument, mitered));
  const miterLeg = reader.read(fields.miterLeg, (value, argument) =>
    readMiterLeg(value, argument, mitered, reader.unit),
  );
  const cutBy = reader.read(fields.cutBy, readCutBy);
  const finish = reader.read(fields.finish, readFinishUnder(fields.finish?.heading ?? ''));
  if (finish === 'unknown') {
    readings.push({
      is: 'unknown finish',
      typed: plainText(String(reader.cell(fields.finish))),
    });
  }
  return {
    ...(longSide ? { longSide } : {}),
    ...(miterLeg === undefined ? {} : { miterLeg }),
    ...(cutBy ? { cutBy } : {}),
    ...(finish === 'galvanized' ? { galvanized: true } : {}),
  };
}
