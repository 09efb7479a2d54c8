import { type Verdict, verdictKind } from '../../core/check/verdict.js';

const size = 14;
const middle = size / 2;
const ring = { cx: middle, cy: middle, r: 5, fill: 'none', stroke: 'currentColor', strokeWidth: 2 };

/**
 * The mark of a verdict: open ring OK, half ring Near limit, dashed ring OK so far, Not checked and Check input, line
 * Off press, solid square any fail. It stands beside the word and says nothing of its own to a screen reader.
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
    case 'open':
      return <circle {...ring} strokeDasharray="3.2 2.1" />;
    case 'elsewhere':
      return <path d="M2 7h10" stroke="currentColor" strokeWidth={2} />;
    case 'passes':
      return (
        <>
          <circle {...ring} />
          {verdict === 'Near limit' && <path d={`M${middle} 2a5 5 0 0 1 0 10z`} fill="currentColor" />}
        </>
      );
  }
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
