import { type Away, zoneSeen } from '../../sheet/formula/moves.js';
import type { Node } from '../../sheet/formula/nodes.js';
import { CannotCompute, isErrorCode, type Matrix, type Scalar, type Values } from './values.js';

const summaries = [
  'AVERAGE',
  'COUNT',
  'COUNTA',
  'MAX',
  'MIN',
  'PRODUCT',
  'STDEV.S',
  'STDEV.P',
  'SUM',
  'VAR.S',
  'VAR.P',
];

/** What a SUBTOTAL comes down to: a summary function over the cells that count. */
export interface Subtotal {
  summary: string;
  columns: Matrix[];
}

/**
 * Reads a SUBTOTAL over references: cells that are subtotals themselves don't count, nor do hidden rows
 * with the codes from 101. Whether a row is hidden by hand or by a filter is not told apart, so the
 * lower codes are not evaluated over hidden rows.
 */
export function readSubtotal(code: Scalar, references: Node[], values: Values, away: Away): Subtotal {
  const number = typeof code.value === 'number' ? Math.trunc(code.value) : 0;
  const summary = summaries[(number > 100 ? number - 100 : number) - 1];
  if (!summary || isErrorCode(code.value))
    throw new CannotCompute('It uses SUBTOTAL in a way that is not evaluated here.');
  return { summary, columns: references.map((node) => counted(node, number > 100, values, away)) };
}

function counted(node: Node, skipsHidden: boolean, values: Values, away: Away): Matrix {
  if (node.kind !== 'reference')
    throw new CannotCompute('It uses SUBTOTAL over something that is no reference.');
  const { sheet } = node;
  const zone = zoneSeen(node, away);
  const kept: Scalar[] = [];
  values.range(sheet, zone).forEach((cells, column) => {
    cells.forEach((scalar, row) => {
      const hidden = values.isHidden(sheet, zone.top + row);
      if (hidden && !skipsHidden) throw new CannotCompute('It uses SUBTOTAL over hidden rows.');
      if (!hidden && !values.isSubtotal(sheet, zone.top + row, zone.left + column)) kept.push(scalar);
    });
  });
  return [kept.length > 0 ? kept : [{ value: null }]];
}
