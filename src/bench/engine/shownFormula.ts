import { stores as untyped } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';
import type { CellPosition, Model } from '@odoo/o-spreadsheet';

/** What knows formulas as people write them. */
export interface FormulaReader {
  isKept(position: CellPosition): boolean;
  formula(position: CellPosition): string | undefined;
}

interface Composer {
  model: Model;
  getComposerContent(position: CellPosition, selection?: unknown): { text: string };
}

const readers = new WeakMap<Model, FormulaReader>();
const { prototype } = (untyped as typeof Engine.stores).CellComposerStore as unknown as {
  prototype: Composer;
};
const { getComposerContent } = prototype;

/** The line that formulas are edited in has the one of the file, not the one that stands for it in the engine. */
prototype.getComposerContent = function (this: Composer, position, selection) {
  const reader = readers.get(this.model);
  if (!reader?.isKept(position)) return getComposerContent.call(this, position, selection);
  return { text: reader.formula(position) ?? '' };
};

/** Shows formulas that keep their value as they stand in the file. */
export function showKeptFormulas(model: Model, reader: FormulaReader): void {
  readers.set(model, reader);
  const { getters } = model;
  const { getCellText } = getters;
  Object.assign(getters, {
    getCellText: (...[position, options]: Parameters<typeof getCellText>) =>
      options?.showFormula && reader.isKept(position)
        ? (reader.formula(position) ?? '')
        : getCellText(position, options),
  });
}
