import { UIPlugin } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { CellPosition } from '@odoo/o-spreadsheet';
import { formatInText, isNumberInText, isTextFormat, resultInText } from './cellContent.js';
import { isProgramWriting, type Dispatch } from './oneCommand.js';

/** What keeps formulas as people write them, while the engine has its own form. */
export interface FormulaKeeper {
  /** The engine's form of a formula; undefined where it is that already, or has none. */
  translate(formula: string, position: CellPosition): string | undefined;
  /** The formula that was typed stands in this cell now. */
  typed(formula: string, position: CellPosition): void;
  /** A command was done; with a dispatch, what a person's command left untidy can be put right in the same step. */
  handled(command: { type: string }, dispatch: Dispatch | undefined): void;
}

type Command = { type: string; content?: string; format?: string } & Partial<CellPosition>;

/** Formulas come to the engine with structured references: they are translated before any part of it sees them. */
export class TypedFormulaPlugin extends UIPlugin {
  private readonly keeper: FormulaKeeper | undefined;
  /** What was typed, by the command that brings it: the engine does others while it does one. */
  private readonly written = new WeakMap<Command, string>();

  constructor(config: ConstructorParameters<typeof UIPlugin>[0]) {
    super(config);
    this.keeper = (config.custom as { keeper?: FormulaKeeper }).keeper;
  }

  override beforeHandle(command: Command): void {
    if (command.type === 'CREATE_SHEET') (command as { rows?: number }).rows ??= this.mostRows();
    // A program has its formulas translated before it writes them.
    if (command.type !== 'UPDATE_CELL' || isProgramWriting()) return;
    this.dropApostrophe(command);
    this.keepText(command);
    if (!command.content?.startsWith('=')) return;
    const translated = this.keeper?.translate(command.content, command as CellPosition);
    if (translated === undefined) return;
    this.written.set(command, command.content);
    command.content = translated;
  }

  /** A list of another sheet is to find room to spill on a new one. */
  private mostRows(): number {
    return Math.max(...this.getters.getSheetIds().map((id) => this.getters.getNumberRows(id)));
  }

  /** People begin text with an apostrophe; in a text cell the engine would keep it as part of the text. */
  private dropApostrophe(command: Command): void {
    if (!command.content?.startsWith("'")) return;
    const format = command.format ?? this.getters.getCell(command as CellPosition)?.format;
    if (!isTextFormat(format) && !isNumberInText(format)) return;
    if (command.content.startsWith("'=")) command.format = resultInText;
    else command.content = command.content.slice(1);
  }

  /** What is typed over a number in a text cell is text; numbers that are put there show all their digits. */
  private keepText(command: Command): void {
    const cell = this.getters.getCell(command as CellPosition);
    const { content, format } = command;
    if (isNumberInText(format)) {
      const holds = content ?? (cell && !cell.isFormula ? cell.content : '=');
      command.format = formatInText(holds.startsWith('=') ? null : Number(holds));
      return;
    }
    if (content === undefined || !isNumberInText(cell?.format)) return;
    // The engine finds dates in what is typed, and says so with a format.
    const isTyped = format === undefined || (content !== '' && Number.isNaN(Number(content)));
    if (isTyped) command.format = content.startsWith('=') ? formatInText(null) : '@';
  }

  override handle(command: Command): void {
    const written = this.written.get(command);
    if (written !== undefined) this.keeper?.typed(written, command as CellPosition);
  }
}
