const width = 120;
const height = 14;
const full = 80;

/** A share of a rating as a bar: the tick stands at the full rating. The number stands beside it, so it is hidden from readers. */
export function ShareBar({ share }: { share: number }) {
  const length = Math.min(width - 2, Math.max(1, share * full));
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden
      style={{ flex: 'none' }}
    >
      <path d={`M1 ${height - 2}H${width - 1}`} stroke="currentColor" strokeWidth={1} opacity={0.5} />
      <rect x={1} y={4} width={length} height={6} fill="currentColor" />
      <path d={`M${full + 1} 0V${height}`} stroke="currentColor" strokeWidth={2} />
    </svg>
  );
}
