import { registries as untyped } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';
import { knowManyCells } from './manyCells.js';
import { knowMergeAgain } from './mergeAgain.js';
import { keptFunction } from './keptFormula.js';
import { RepairPlugin } from './repairPlugin.js';
import { OneCommandPlugin } from './oneCommand.js';
import { TypedFormulaPlugin } from './typedFormulaPlugin.js';

const registries = untyped as typeof Engine.registries;

/** Two strokes between lines: this cell holds still. Drawn beside the value, so it does not hang on color. */
const keptMark = {
  name: 'tonrow_kept',
  width: 16,
  height: 16,
  paths: [{ path: 'M3 2h10v2H3zM3 12h10v2H3zM4 5h3v6H4zM9 5h3v6H9z', fillColor: '#595959' }],
};

/** Adds to the engine what the page needs of it, once. */
export function prepareEngine(): void {
  if (registries.featurePluginRegistry.contains('tonrow_together')) return;
  knowManyCells();
  knowMergeAgain();
  registries.featurePluginRegistry.add('tonrow_together', OneCommandPlugin);
  registries.featurePluginRegistry.add('tonrow_typed', TypedFormulaPlugin);
  registries.featurePluginRegistry.add('tonrow_tidy', RepairPlugin);
  registries.iconsOnCellRegistry.add('tonrow_kept', (getters, position) => {
    const cell = getters.getCell(position);
    if (!cell?.isFormula || !cell.compiledFormula.usesSymbol(keptFunction)) return undefined;
    return {
      type: 'tonrow_kept',
      svg: keptMark,
      priority: 3,
      horizontalAlign: 'left',
      size: 12,
      margin: 4,
      position,
    };
  });
  // Text of a workbook that looks like a link stays the text it is, and leads nowhere.
  registries.urlRegistry.add('tonrow_text', {
    match: () => true,
    createLink: (url: string, label: string) => ({
      url,
      label: label === url ? url : `[${label}](${url})`,
      isExternal: false,
      isUrlEditable: false,
    }),
    urlRepresentation: (url: string) => url,
    open: () => undefined,
    sequence: -1,
    title: 'Text',
  });
}
