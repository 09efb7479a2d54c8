import { refuse } from '../inputError.js';
import { parseZone } from '../../sheet/address.js';
import { type Piece, readPieces } from '../../sheet/formula/pieces.js';
import { splitArguments } from '../../sheet/formula/splitArguments.js';
import { parseStructured } from '../../sheet/formula/tableReference.js';

/** A range named in the formula of the shop cell: a table, a defined name, or cells of a sheet. */
export type ShopRange =
  | { kind: 'table'; name: string }
  | { kind: 'name'; name: string }
  | { kind: 'cells'; sheet?: string; address: string };

const longestFormula = 8192;
/** The references to a table that take in all its rows and its headings. */
const wholeTable = ['#ALL', '#HEADERS,#DATA'];

/**
 * The ranges that the formula of the shop cell names, in the order of SHOP's arguments; undefined where an
 * argument is left out. The names of the tables are the user's own. Throws for a formula that is no SHOP call.
 */
export function shopRanges(formula: string): (ShopRange | undefined)[] {
  const call = /^=(?:_xldudf_TONROW_SHOP|(?:_xll\.)?TONROW\.SHOP)\((.*)\)$/is.exec(
    formula.slice(0, longestFormula).trim(),
  );
  if (!call)
    return refuse('ShopStamp', formula, 'the cell holds no SHOP formula.', 'Write =TONROW.SHOP(…) in it.');
  const given = splitArguments(call[1] ?? '') ?? [call[1] ?? ''];
  return given.map((text) => (text === '' ? undefined : readRange(text)));
}

function readRange(text: string): ShopRange {
  const [piece, ...more] = readPieces(text);
  return (
    (piece && more.length === 0 ? rangeOf(piece) : undefined) ??
    refuse(
      'ShopStamp',
      text,
      `'${text.slice(0, 60)}' is no table, name or range.`,
      'Give SHOP whole tables with their headings.',
    )
  );
}

function rangeOf(piece: Piece): ShopRange | undefined {
  if (piece.kind === 'table') {
    const { items, first } = parseStructured(piece.bracket.slice(1, -1)) ?? {};
    const isWhole = piece.name !== '' && first === undefined && wholeTable.includes(items?.join() ?? '');
    return isWhole ? { kind: 'table', name: piece.name } : undefined;
  }
  if (piece.kind === 'name')
    return /^[\p{L}_\\][^$?]*$/u.test(piece.text) && piece.sheet === undefined
      ? { kind: 'name', name: piece.name }
      : undefined;
  if (piece.kind !== 'cells') return undefined;
  const address = piece.text.slice(piece.prefix.length);
  // Whole rows and columns, other workbooks and several sheets are no range of a shop.
  if (!parseZone(address) || /[[:]/.test(piece.sheet ?? '')) return undefined;
  return piece.sheet === undefined
    ? { kind: 'cells', address }
    : { kind: 'cells', sheet: piece.sheet, address };
}
