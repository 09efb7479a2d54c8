import { type Area, cellAddress } from '../../../workbook/area.js';
import { type Content, isErrorConstant, isFormula } from '../../../workbook/content.js';
import type { Step } from '../../../workbook/write/step.js';
import { shortText } from '../shortText.js';

/** What a step does, in a few words. */
export function describeStep(step: Step): string {
  switch (step.kind) {
    case 'sheet':
      return `New sheet ${step.name}`;
    case 'table':
      return `New table ${step.name} at ${where(step.area)}`;
    case 'name':
      return `The name ${step.name} for ${where(step.area)}`;
    case 'resize':
      return `Table ${step.table} becomes ${cellAddress(step.area)}`;
    case 'column': {
      const filled = step.contents.filter((content) => content !== null && content !== '').length;
      return `New column ${shortText(step.heading)} in table ${step.table}${filled > 0 ? `, ${counted(filled, 'cell')} filled` : ', blank'}`;
    }
    case 'cells':
      return `${where(step.area)}: ${describeCells(step)}`;
  }
}

/** So many contents are named one by one. */
const fewCells = 6;

function describeCells({ area, contents, formats }: Extract<Step, { kind: 'cells' }>): string {
  const filled = (contents ?? []).flat().filter((content) => content !== undefined);
  const [only] = filled;
  if (filled.length === 1 && only !== undefined) return `becomes ${shownContent(only)}`;
  if (filled.length > 0 && filled.every(isFormula)) return counted(filled.length, 'formula');
  if (filled.length > 1 && filled.length <= fewCells)
    return filled.map((content) => shownContent(content as Content)).join(', ');
  if (filled.length > 0) return counted(filled.length, 'cell');
  const asText = formats?.flat().every((format) => format === undefined || format === '@');
  return `${counted(area.rows * area.columns, 'cell')} ${asText ? 'formatted as text' : 'formatted'}`;
}

export function shownContent(content: Content): string {
  if (isFormula(content)) return shortText(content.formula, 160);
  if (isErrorConstant(content)) return content.error;
  return content === null || content === '' ? 'blank' : shortText(String(content));
}

export function where(area: Area): string {
  return `${area.sheet}!${cellAddress(area)}`;
}

export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}
