import { type Verdict, verdictKind } from '../../core/check/verdict.js';

const size = 14;
const middle = size / 2;
const ring = { cx: middle, cy: middle, r: 5, fill: 'none', stroke: 'currentColor', strokeWidth: 2 };

/**
 * The mark of a verdict: open ring OK, half ring Near limit, ring with its lower half dotted OK so far, dashed ring
 * Not checked, Check input and No part, short bar Off press, solid square any fail. It stands beside the word and says nothing of its own to a screen reader.
 */
export function VerdictMark({ verdict }: { verdict: Verdict }) {
  return (
    <svg
      width={size}
      height={size}
      viewBox={`0 0 ${size} ${size}`}
      aria-hidden
      style={{ flex: 'none', alignSelf: 'flex-start', marginBlockStart: 3 }}
    >
      {shapeOf(verdict)}
    </svg>
  );
}

function shapeOf(verdict: Verdict) {
  switch (verdictKind(verdict)) {
    case 'fails':
      return <rect x={2} y={2} width={10} height={10} fill="currentColor" />;
    case 'unknown':
      return <circle {...ring} strokeDasharray="3.2 2.1" />;
    case 'open':
      return (
        <>
          <path d="M2 7a5 5 0 0 1 10 0" fill="none" stroke="currentColor" strokeWidth={2} />
          {[15, 52.5, 90, 127.5, 165].map((degrees) => (
            <Dot key={degrees} angle={(degrees * Math.PI) / 180} />
          ))}
        </>
      );
    case 'elsewhere':
      return <path d="M2.5 7h9" stroke="currentColor" strokeWidth={2.5} />;
    case 'passes':
      return (
        <>
          <circle {...ring} />
          {verdict === 'Near limit' && <path d={`M${middle} 2a5 5 0 0 1 0 10z`} fill="currentColor" />}
        </>
      );
  }
}

/** On the ring, at an angle downwards from its right. */
function Dot({ angle }: { angle: number }) {
  const [x, y] = [middle + ring.r * Math.cos(angle), middle + ring.r * Math.sin(angle)];
  return <circle cx={x} cy={y} r={0.9} fill="currentColor" />;
}

/** The mark with its word. */
export function VerdictWord({ verdict }: { verdict: Verdict }) {
  return (
    <span style={{ display: 'inline-flex', alignItems: 'center', gap: 6, fontWeight: 600 }}>
      <VerdictMark verdict={verdict} />
      {verdict}
    </span>
  );
}
