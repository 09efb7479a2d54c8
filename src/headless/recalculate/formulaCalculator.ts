import { isCellError, type StoredValue } from '../../sheet/cellValue.js';
import type { Workbook } from '../../xlsx/workbook.js';
import { CannotCompute, isMatrix, Waiting, type Operand } from '../engine/values.js';
import { supportedFunctions } from '../engine/supportedFunctions.js';
import type { Formula } from '../../sheet/formula/nodes.js';
import { notAway } from '../../sheet/formula/moves.js';
import { newWork } from '../../sheet/formula/scope.js';
import { parseFormula } from '../../sheet/formula/parse.js';
import type { LoadedFunctions } from '../functions/scriptHost.js';
import { calculateWorkbook, type Calculated } from './calculate.js';
import { toCellValue } from './spill.js';

interface FormulaError {
  code: string;
  message: string;
}

/** What the errors of native formulas mean; our functions give their own sentences. */
const meanings: Record<string, string> = {
  '#DIV/0!': 'It divides by zero.',
  '#N/A': 'The value it looks for is not there.',
  '#NAME?': 'It uses a name that is not known.',
  '#NULL!': 'Two ranges do not cross.',
  '#NUM!': 'A number is out of range.',
  '#REF!': 'It refers to a cell that does not exist.',
};

type Plain = number | string | boolean;

/** The outcome of one formula: a value, rows of values, or an error. */
export type FormulaResult = { value: Plain | (Plain | FormulaError)[][] } | { error: FormulaError };

const emptyWorkbook = {
  sheets: [{ name: 'Sheet1', part: '', visibility: 'visible', cells: undefined }],
  names: [],
  tables: [],
  date1904: false,
  iterates: false,
} satisfies Omit<Workbook, 'package' | 'part'>;

/** Functions of the moment: nothing stored can be made wrong by them here. */
const ofTheMoment = new Set(['NOW', 'TODAY']);

/** Evaluates formulas one by one, over a calculated workbook or over nothing. */
export class FormulaCalculator {
  private constructor(private readonly calculated: Calculated) {}

  static async over(workbook: Workbook | undefined, functions: LoadedFunctions): Promise<FormulaCalculator> {
    return new FormulaCalculator(await calculateWorkbook(workbook ?? emptyWorkbook, functions, []));
  }

  async evaluate(text: string): Promise<FormulaResult> {
    if (!text.startsWith('='))
      return failed('#VALUE!', 'A formula starts with an equals sign, such as =1+1.');
    const place = { sheet: 0, row: 1_048_575, column: 16_383 };
    this.calculated.evaluator.work.begin();
    const formula = parseFormula(
      text.slice(1),
      { ...place, shift: { rows: 0, columns: 0 } },
      { ...this.calculated.scope, work: newWork() },
    );
    const why = whyNot(formula);
    if (why) return why;
    await this.calculated.evaluator.native.loadFor([formula]);
    const setting = { ...place, plain: false, ours: true, away: notAway };
    for (;;) {
      try {
        return toResult(this.calculated.evaluator.evaluate(formula.node, setting));
      } catch (error) {
        if (error instanceof CannotCompute) return failed('#VALUE!', error.message);
        if (!(error instanceof Waiting) || !(await this.calculated.functions.settle())) throw error;
      }
    }
  }
}

const failed = (code: string, message: string): FormulaResult => ({ error: { code, message } });

function whyNot(formula: Formula): FormulaResult | undefined {
  for (const name of formula.functions) {
    if (supportedFunctions.has(name) || ofTheMoment.has(name)) continue;
    return failed('#NAME?', `It uses ${name}, which is not among the functions evaluated here.`);
  }
  return formula.unsupported === undefined ? undefined : failed('#NAME?', formula.unsupported);
}

function toResult(operand: Operand): FormulaResult {
  if (isMatrix(operand)) {
    const height = operand[0]?.length ?? 0;
    const rows = Array.from({ length: height }, (_, row) =>
      operand.map((column) => plain(toCellValue(column[row] ?? { value: null }))),
    );
    return { value: rows };
  }
  const value = plain(toCellValue(operand));
  return typeof value === 'object' ? { error: value } : { value };
}

function plain(value: StoredValue): Plain | FormulaError {
  if (value === null) return 0;
  if (!isCellError(value)) return value;
  const message = value.message ?? meanings[value.error] ?? 'A value in it is of the wrong kind.';
  return { code: value.error, message };
}
