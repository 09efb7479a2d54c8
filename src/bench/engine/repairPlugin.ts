import { UIPlugin } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import { isProgramWriting, type Dispatch } from './oneCommand.js';
import type { FormulaKeeper } from './typedFormulaPlugin.js';

/** After what a person does to tables in the grid, their headings and the formulas over them are put right. */
export class RepairPlugin extends UIPlugin {
  private readonly keeper: FormulaKeeper | undefined;

  constructor(config: ConstructorParameters<typeof UIPlugin>[0]) {
    super(config);
    this.keeper = (config.custom as { keeper?: FormulaKeeper }).keeper;
  }

  override handle(command: { type: string }): void {
    if (isProgramWriting()) return;
    // What is undone is as it was, and a program says itself what it wants.
    const isDone = ['UNDO', 'REDO', 'TONROW_TOGETHER'].includes(command.type);
    this.keeper?.handled(command, isDone ? undefined : (this.dispatch as Dispatch));
  }
}
