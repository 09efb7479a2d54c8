/** A size that a line would break at its hyphen: `1-1/16`. */
const broken = /(\d+-\d+\/\d+)/;

/** Text whose sizes stay whole where lines break. */
export function WholeSizes({ text }: { text: string }) {
  return text.split(broken).map((piece, at) =>
    at % 2 === 0 ? (
      piece
    ) : (
      <span key={at} style={{ whiteSpace: 'nowrap' }}>
        {piece}
      </span>
    ),
  );
}
