import { parseZone, type Zone } from '../address.js';
import { readPieces } from './pieces.js';

/** The range a name stands for when it stands for nothing else: `Shop!$B$4`. */
export function rangeOfName(text: string): { sheet: string; zone: Zone } | undefined {
  const [piece, ...more] = readPieces(text.replace(/^=/, ''));
  if (piece?.kind !== 'cells' || piece.sheet === undefined || more.length > 0) return undefined;
  const zone = parseZone(piece.text.slice(piece.prefix.length));
  return zone && { sheet: piece.sheet, zone };
}
