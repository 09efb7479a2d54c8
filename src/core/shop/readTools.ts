import { InputError, refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { readNumber } from '../quantity/readNumber.js';
import type { LengthUnit } from '../quantity/units.js';
import { describeHole, type Hole } from '../tooling/hole.js';
import { readHoleSize } from '../tooling/readHole.js';
import { type Cells, nameKey, readTable, type Table } from './table.js';

/** A punch or die on hand. The size of a die is its opening. */
export interface Tool {
  /** The press it fits; undefined fits any. */
  press?: string;
  kind: 'punch' | 'die';
  size: Hole;
  /** The size as it stands in the table, where it is text. */
  written?: string;
  count: number;
  /** The sleeve or stem family it belongs to, where the table says it. */
  holder?: string;
  /** Length of a punch from the face that carries it to its tip, where the table says it. */
  heightMm?: number;
  /** Why its height could not be read: it is then not known. */
  heightProblem?: string;
  /** Diameter of the tool's body, where the table says it. */
  bodyMm?: number;
  /** Why its cell could not be read: shops also write families of bodies there, and the tool is on hand all the same. */
  bodyProblem?: string;
}

export interface ToolsRead {
  tools: Tool[];
  problems: UnreadTool[];
}

/** A row of the table that could not be read, from 1, and why. */
export interface UnreadTool {
  row: number;
  problem: string;
}

/** Why a row could not be read, with where it stands. */
export function unreadToolText({ row, problem }: UnreadTool): string {
  return `Tools, row ${row}, ${problem}`;
}

const shapes = ['round', 'square', 'rectangle', 'slot', 'hexagon'] as const;

/**
 * Reads the Tools table: Press (or any), Kind, Shape, Size, Length, Body, Holder, Height, Count. A blank count is one, `none` is none on
 * hand.
 */
export function readTools(cells: Cells | undefined, unit: LengthUnit): ToolsRead | undefined {
  if (!cells) return undefined;
  const table = readTable(cells, 'Tools', ['Press', 'Kind', 'Size']);
  const read: ToolsRead = { tools: [], problems: [] };
  table.rows.forEach((row, index) => {
    if (row.every((cell) => isBlank(cell))) return;
    try {
      read.tools.push(readTool(row, table, unit));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      read.problems.push({ row: index + 1, problem: error.messageInCell });
    }
  });
  return read;
}

function readTool(row: readonly CellValue[], table: Table, unit: LengthUnit): Tool {
  const press = table.cell(row, 'Press');
  const kind = nameKey(table.cell(row, 'Kind'));
  if (kind !== 'punch' && kind !== 'die') {
    return refuse(
      'Kind',
      kind,
      `${quoted(table.cell(row, 'Kind'))} is not a kind of tool.`,
      'Write punch or die.',
    );
  }
  const count = table.cell(row, 'Count');
  const size = toolSize(row, table, unit);
  // Named by what it is, not by its row: the order of tools does not change what a shop is.
  const name = `Tools, ${kind} ${describeHole(size.size, unit)}`;
  const holder = table.cell(row, 'Holder');
  const tool: Tool = {
    kind,
    ...size,
    ...toolBody(table.cell(row, 'Body'), `${name}, Body`, unit),
    ...(isBlank(holder) ? {} : { holder: plainText(String(holder)) }),
    ...toolHeight(table.cell(row, 'Height'), `${name}, Height`, unit),
    count: readCount(count, 'Count'),
  };
  const any = isBlank(press) || nameKey(press) === 'any';
  return any ? tool : { ...tool, press: plainText(String(press)) };
}

function toolBody(cell: CellValue, argument: string, unit: LengthUnit): Pick<Tool, 'bodyMm' | 'bodyProblem'> {
  const { lengthMm, problem } = toolLength(cell, argument, unit);
  if (problem !== undefined) return { bodyProblem: problem };
  return lengthMm === undefined ? {} : { bodyMm: lengthMm };
}

function toolHeight(
  cell: CellValue,
  argument: string,
  unit: LengthUnit,
): Pick<Tool, 'heightMm' | 'heightProblem'> {
  const { lengthMm, problem } = toolLength(cell, argument, unit);
  if (problem !== undefined) return { heightProblem: problem };
  return lengthMm === undefined ? {} : { heightMm: lengthMm };
}

/** A length of a tool; what cannot be read is kept as its problem, and the tool is on hand all the same. */
function toolLength(
  cell: CellValue,
  argument: string,
  unit: LengthUnit,
): { lengthMm?: number; problem?: string } {
  if (isBlank(cell)) return {};
  try {
    return { lengthMm: readLength(cell, argument, unit, 'distance') };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { problem: error.messageInCell };
  }
}

function readCount(cell: CellValue, argument: string): number {
  if (isBlank(cell)) return 1;
  if (nameKey(cell) === 'none') return 0;
  return readNumber(cell, argument, 'Write a whole number, or none.');
}

function toolSize(row: readonly CellValue[], table: Table, unit: LengthUnit): Pick<Tool, 'size' | 'written'> {
  const shapeCell = table.cell(row, 'Shape');
  const shape = isBlank(shapeCell) ? 'round' : shapes.find((each) => each === nameKey(shapeCell));
  if (shape === undefined) {
    const problem = `${quoted(shapeCell)} is not a shape.`;
    return refuse('Shape', String(shapeCell), problem, `Write ${shapes.join(', ')}.`);
  }
  const size = table.cell(row, 'Size');
  const length = table.cell(row, 'Length');
  if (isBlank(size)) return refuse('Size', '', 'the cell is blank.', 'Write the size of the tool.');
  const sides = isBlank(length) ? String(size) : `${String(size)} x ${String(length)}`;
  const hole = readHoleSize(sides, shape, 'Size', unit);
  const typed = [size, length].filter((cell) => !isBlank(cell));
  // A number has the shop's unit, and reads best as every other size of the shop does.
  const isText = typed.some((cell) => typeof cell === 'string');
  const name = shape === 'round' ? 'Ø' : `${shape} `;
  return isText ? { size: hole, written: `${name}${plainText(typed.join(' × '))}` } : { size: hole };
}
