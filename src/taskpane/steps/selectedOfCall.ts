import { InputError } from '../../core/inputError.js';
import type { Grade } from '../../core/material/grade.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { readLength } from '../../core/quantity/readLength.js';
import { gradeOfShop } from '../../core/shop/gradeOfShop.js';
import type { Shop } from '../../core/shop/readShop.js';
import { nameKey } from '../../core/shop/table.js';
import { readHole } from '../../core/tooling/readHole.js';
import type { SelectedHole } from '../../drawing/capacity/selectedHole.js';
import type { Subject } from './subject.js';

/** Where the functions that are about a punched hole take it, and the press where they take one. */
const places: Record<string, { press?: number; hole: number; thickness: number; grade: number }> = {
  PUNCHFORCE: { hole: 0, thickness: 1, grade: 2 },
  STRIPFORCE: { hole: 0, thickness: 1, grade: 2 },
  DIEOPENING: { hole: 0, thickness: 1, grade: 2 },
  PUNCHUSE: { press: 0, hole: 1, thickness: 2, grade: 3 },
  TOOLPICK: { press: 0, hole: 1, thickness: 2, grade: 3 },
};

export interface CallHole {
  selected: SelectedHole;
  grade: Grade;
  /** The press the call names. */
  press?: string;
}

/** The hole a call is about; undefined for calls about something else, or that cannot be read. */
export function selectedOfCall(call: Extract<Subject, { kind: 'call' }>, shop: Shop): CallHole | undefined {
  const place = places[call.name];
  if (!place) return undefined;
  const value = (at: number): CellValue => call.arguments[at]?.values[0]?.[0] ?? null;
  try {
    const grade = gradeOfShop(value(place.grade), 'Grade', shop);
    const selected = {
      hole: readHole(value(place.hole), 'Hole', shop.unit).hole,
      thicknessMm: readLength(value(place.thickness), 'Thickness', shop.unit, 'thickness'),
    };
    const named = place.press === undefined ? '' : nameKey(value(place.press));
    const press = shop.presses.find(({ name }) => nameKey(name) === named)?.name;
    return press === undefined ? { selected, grade } : { selected, grade, press };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
