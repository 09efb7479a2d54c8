/** A cell as a spreadsheet host keeps it. */
export interface StoredCell {
  value: string | number | boolean;
  format: string;
  formula?: string;
  /** The value is an error code, not text. */
  error?: boolean;
}

/** Thrown by the double as the host reports failures: with a code. */
export class HostFailure extends Error {
  constructor(readonly code: string) {
    super(`the host says ${code}`);
  }
}

const errorCode = /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)$/;
const number = /^[+-]?(?:\d+(?:,\d{3})*(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;
const dayAndMonth = /^(\d{1,2})[/-](\d{1,2})$/;
const mixed = /^(\d+) (\d+)\/(\d+)$/;

/**
 * What becomes of something put into a cell: hosts read text as if a person had typed it, except in cells
 * with the text format, where everything stays as it is.
 */
export function typed(input: string | number | boolean, format: string): StoredCell {
  if (format === '@')
    return { value: typeof input === 'boolean' ? String(input).toUpperCase() : String(input), format };
  if (typeof input !== 'string') return { value: input, format };
  if (input.startsWith("'")) return { value: input.slice(1), format };
  if (input.startsWith('=')) return formula(input, format);
  const percent = input.endsWith('%') ? input.slice(0, -1) : input;
  if (number.test(percent)) {
    const value = Number(percent.replaceAll(',', '')) / (percent === input ? 1 : 100);
    return { value, format: percent === input ? format : '0%' };
  }
  const [, month, day] = dayAndMonth.exec(input) ?? [];
  if (Number(month) >= 1 && Number(month) <= 12 && Number(day) >= 1 && Number(day) <= 28)
    return { value: 46_000 + Number(month) * 30 + Number(day), format: 'd-mmm' };
  const [, whole, over, under] = mixed.exec(input) ?? [];
  if (whole !== undefined) return { value: Number(whole) + Number(over) / Number(under), format: '# ?/?' };
  if (/^(?:true|false)$/i.test(input)) return { value: input.toLowerCase() === 'true', format };
  if (errorCode.test(input)) return { value: input, format, error: true };
  if (/^[+\-@]./.test(input)) return formula(`=${input.replace(/^[+@]/, '')}`, format);
  return { value: input, format };
}

function formula(text: string, format: string): StoredCell {
  const balanced = text.split('(').length === text.split(')').length;
  if (!balanced || text.length > 8192 || text === '=') throw new HostFailure('InvalidArgument');
  if (text === '=NA()') return { value: '#N/A', format, formula: text, error: true };
  const [, a, b] = /^=(\d+)\+(\d+)$/.exec(text) ?? [];
  return { value: a === undefined ? 0 : Number(a) + Number(b), format, formula: text };
}
