import { sizePieces } from '../../core/quantity/sizePieces.js';

/** Text whose sizes stay whole where lines break. */
export function WholeSizes({ text }: { text: string }) {
  return sizePieces(text).map((piece, at) =>
    at % 2 === 0 ? (
      piece
    ) : (
      <span key={at} style={{ whiteSpace: 'nowrap' }}>
        {piece}
      </span>
    ),
  );
}
