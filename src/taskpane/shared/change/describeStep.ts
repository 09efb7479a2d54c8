import { serialDate } from '../../../sheet/serialDate.js';
import { type Area, cellAddress } from '../../../workbook/area.js';
import { type Content, isErrorConstant, isFormula } from '../../../workbook/content.js';
import type { Step } from '../../../workbook/step.js';
import { shortText } from '../shortText.js';

/** So many areas that become the same are named one by one. */
const fewAreas = 4;

/** What steps do, a line each; cells that become the same value, or are one by one many, are told together. */
export function describeSteps(steps: readonly Step[]): string[] {
  const together = new Map<string, Step[]>();
  steps.forEach((step, at) => {
    const key = togetherKey(step) ?? String(at);
    together.set(key, [...(together.get(key) ?? []), step]);
  });
  return [...together.values()].flatMap((alike) => {
    const [first] = alike;
    if (!first) return [];
    if (alike.length === 1) return [describeStep(first)];
    if (first.kind === 'unmerge') return [describeApart(alike)];
    const same = sameValue(first);
    if (same !== undefined) return [describeTogether(alike, `become ${shownContent(same)}`)];
    return alike.length > fewAreas ? [describeTogether(alike, 'as listed below')] : alike.map(describeStep);
  });
}

function describeApart(steps: readonly Step[]): string {
  const areas = steps.flatMap((step) => ('area' in step ? step.area : []));
  const named = areas.slice(0, fewAreas).map((area, at) => (at === 0 ? where(area) : cellAddress(area)));
  const more =
    areas.length > fewAreas ? ` and ${counted(areas.length - fewAreas, 'more area', 'more areas')}` : '';
  return `${named.join(', ')}${more}: no longer merged, each text stays in its first cell`;
}

/** Equal for steps that can be told together: the same value on one sheet, or single cells of one column. */
function togetherKey(step: Step): string | undefined {
  if (step.kind === 'unmerge') return JSON.stringify([step.area.sheet, 'unmerge']);
  if (step.kind !== 'cells' || step.contents === undefined) return undefined;
  const { sheet, column, rows, columns } = step.area;
  const same = sameValue(step);
  if (same !== undefined) return JSON.stringify([sheet, same]);
  return rows === 1 && columns === 1 && !isFormula(step.contents[0]?.[0])
    ? JSON.stringify([sheet, column, 'single'])
    : undefined;
}

/** The one value that a step writes into all its cells, with its format left alone. */
function sameValue(step: Step): Content | undefined {
  if (step.kind !== 'cells' || step.formats !== undefined) return undefined;
  const [first, ...others] = (step.contents ?? []).flat();
  return first === undefined || isFormula(first) || others.some((other) => other !== first)
    ? undefined
    : first;
}

function describeTogether(steps: readonly Step[], what: string): string {
  const areas = steps.flatMap((step) => ('area' in step ? step.area : []));
  const cells = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  const named = areas.slice(0, fewAreas).map((area, at) => (at === 0 ? where(area) : cellAddress(area)));
  const more = areas.length > fewAreas ? ' and more' : '';
  return `${named.join(', ')}${more}: ${counted(cells, 'cell')} ${what}`;
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
    case 'unmerge':
      return `${where(step.area)}: no longer merged, its text stays in the first cell`;
    case 'resize':
      return `Table ${step.table} becomes ${cellAddress(step.area)}`;
    case 'column': {
      const filled = step.contents.filter((content) => content !== null && content !== '').length;
      return `New column ${shortText(step.heading)} in table ${step.table}${filled > 0 ? `, ${counted(filled, 'cell')} filled` : ', blank'}`;
    }
    case 'cells':
      return `${where(step.area)}${describeCells(step)}`;
  }
}

/** So many contents are named one by one. */
const fewCells = 6;

/** What cells become, to be said right after where they are. */
function describeCells({ area, contents, formats }: Extract<Step, { kind: 'cells' }>): string {
  const filled = (contents ?? []).flat().filter((content) => content !== undefined);
  const [only] = filled;
  if (filled.length > 1 && filled.every((content) => content === null))
    return `: ${counted(filled.length, 'cell')} emptied`;
  if (filled.length === 1 && only !== undefined) return ` becomes ${shownContent(only)}`;
  if (filled.length > 0 && filled.every(isFormula)) return `: ${counted(filled.length, 'formula')}`;
  if (filled.length > 1 && filled.length <= fewCells)
    return `: ${filled.map((content) => shownContent(content as Content)).join(', ')}`;
  if (filled.length > 0) return `: ${counted(filled.length, 'cell')}`;
  const asText = formats?.flat().every((format) => format === undefined || format === '@');
  const cells = formats?.flat().filter((format) => format !== undefined).length ?? area.rows * area.columns;
  return `: ${counted(cells, 'cell')} ${asText ? 'formatted as text' : 'formatted'}`;
}

export function shownContent(content: Content): string {
  if (isFormula(content)) return shortText(content.formula, 160);
  if (isErrorConstant(content)) return content.error;
  return content === null || content === '' ? 'blank' : shortText(String(content));
}

/** What a cell holds, as a person knows it: a number that shows as a date, as that date. */
export function shownHeld(content: Content, format: string): string {
  const plain = format.replaceAll(/"[^"]*"|\\.|\[[^\]]*\]/g, '');
  if (typeof content !== 'number' || !/[dy]/i.test(plain)) return shownContent(content);
  return `${serialDate(content).text} (${content})`;
}

export function where(area: Area): string {
  return `${area.sheet}!${cellAddress(area)}`;
}

export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}
