import { type Area, cellAddress } from '../../../workbook/area.js';
import { type Content, isErrorConstant, isFormula } from '../../../workbook/content.js';
import type { Step } from '../../../workbook/write/step.js';
import { shortText } from '../shortText.js';

/** So many areas that become the same are named one by one. */
const fewAreas = 4;

/** What steps do, a line each; cells that become the same value are told together. */
export function describeSteps(steps: readonly Step[]): string[] {
  const together = new Map<string, Area[]>();
  steps.forEach((step, at) => {
    const key = sameValueKey(step) ?? String(at);
    together.set(key, [...(together.get(key) ?? []), ...('area' in step ? [step.area] : [])]);
  });
  const first = new Map([...steps].reverse().map((step) => [sameValueKey(step), step]));
  return steps.flatMap((step, at) => {
    const key = sameValueKey(step);
    if (key !== undefined && first.get(key) !== step) return [];
    const areas = together.get(key ?? String(at)) ?? [];
    return [areas.length > 1 ? describeTogether(step, areas) : describeStep(step)];
  });
}

/** Equal for steps that write the same single value on the same sheet. */
function sameValueKey(step: Step): string | undefined {
  if (step.kind !== 'cells' || step.formats !== undefined) return undefined;
  const [first, ...others] = (step.contents ?? []).flat();
  if (first === undefined || isFormula(first) || others.some((other) => other !== first)) return undefined;
  return JSON.stringify([step.area.sheet, first]);
}

function describeTogether(step: Step, areas: readonly Area[]): string {
  const [content] = step.kind === 'cells' ? (step.contents ?? []).flat() : [];
  const cells = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  const named = areas.slice(0, fewAreas).map((area, at) => (at === 0 ? where(area) : cellAddress(area)));
  const more = areas.length > fewAreas ? ' and more' : '';
  return `${named.join(', ')}${more}: ${counted(cells, 'cell')} become ${shownContent(content ?? null)}`;
}

/** What a step does, in a few words. */
function describeStep(step: Step): string {
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
