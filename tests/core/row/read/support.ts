import type { LengthKindName } from '../../../../src/core/quantity/lengthKind.js';
import { readLength } from '../../../../src/core/quantity/readLength.js';
import type { LengthUnit } from '../../../../src/core/quantity/units.js';
import { readAnySection } from '../../../../src/core/section/readAnySection.js';

/** Reads the sizes inside a cell, as a row does it. */
export const lengthsIn =
  (unit: LengthUnit) =>
  (text: string, kind: LengthKindName = 'distance') =>
    readLength(text, 'Cell', unit, kind);

export const sectionOf = (text: string, unit: LengthUnit = 'in') =>
  readAnySection(text, 'Section', unit).section;

/** The same with every length in mm, `fromMm`, as inches under `from`, in whole ten-thousandths. */
export function inInches(value: unknown): unknown {
  if (Array.isArray(value))
    return value.map((each) => (typeof each === 'number' ? toInch(each) : inInches(each)));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) =>
      key.endsWith('Mm')
        ? [key.replace(/Mm$/, ''), typeof each === 'number' ? toInch(each) : inInches(each)]
        : [key, inInches(each)],
    ),
  );
}

function toInch(mm: number): number {
  return Number((mm / 25.4).toFixed(4));
}
