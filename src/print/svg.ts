import type { Fill, Line, Shape } from '../drawing/drawing.js';
import { html, Html } from './html.js';

/** Black lines by their meaning: width, and dashes where they have them. */
const strokes: Record<Line, { width: number; dash?: string }> = {
  outline: { width: 2 },
  thin: { width: 0.9 },
  hidden: { width: 1.2, dash: '6 3' },
  center: { width: 0.8, dash: '12 3 3 3' },
  heavy: { width: 4 },
};

/** The patterns are the same in each drawing of a page, so their names are too. */
const fills: Record<Fill, string> = {
  solid: '#000',
  paper: '#fff',
  hatch: '#bbb',
  stipple: 'url(#stipple)',
  cross: 'url(#cross)',
};

const patterns: Partial<Record<Fill, Html>> = {
  stipple: html`<pattern id="stipple" width="6" height="6" patternUnits="userSpaceOnUse">
    <circle cx="2" cy="2" r="1" />
    <circle cx="5" cy="5" r="1" />
  </pattern>`,
  cross: html`<pattern id="cross" width="8" height="8" patternUnits="userSpaceOnUse">
    <path d="M0 0L8 8M8 0L0 8" stroke="#000" stroke-width="0.7" />
  </pattern>`,
};

function patternsOf(shapes: readonly Shape[]): Html[] {
  const used = new Set(
    shapes.flatMap((shape) => (shape.kind === 'area' ? (patterns[shape.fill] ?? []) : [])),
  );
  return used.size === 0 ? [] : [html`<defs>${[...used]}</defs>`];
}

/** Labels have their places for letters of this size, also on a page without a style. */
const letters = html`font-size="12" font-family="Arial, Liberation Sans, Helvetica, sans-serif"`;

/** A drawing as part of a page that prints, black on white; `label` says what it shows, `scale` how much larger it is. */
export function svg(
  { width, height, shapes }: { width: number; height: number; shapes: readonly Shape[] },
  label: string,
  scale = 1,
): Html {
  const [w, h] = [Math.ceil(width), Math.ceil(height)];
  return html`<svg
    xmlns="http://www.w3.org/2000/svg"
    width="${Math.ceil(w * scale)}"
    height="${Math.ceil(h * scale)}"
    viewBox="0 0 ${w} ${h}"
    role="img"
    aria-label="${label}"
    ${letters}
  >
    ${patternsOf(shapes)} ${shapes.map(shapeHtml)}
  </svg>`;
}

function shapeHtml(shape: Shape): Html {
  switch (shape.kind) {
    case 'line':
      return html`<path d="${shape.path}" fill="none" ${strokeOf(shape.line, shape.dash)} />`;
    case 'area':
      return html`<path
        d="${shape.path}"
        fill="${fills[shape.fill]}"
        ${shape.line ? strokeOf(shape.line) : []}
      />`;
    case 'text':
      return textHtml(shape);
  }
}

/** The widest of usual fonts, with a box or bare paper behind so that lines do not cross it. */
const letterWidth = 7;

function textHtml({
  x,
  y,
  text,
  anchor = 'start',
  strong,
  behind,
  turned,
}: Extract<Shape, { kind: 'text' }>): Html {
  const width = text.length * letterWidth + 4;
  const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width + 2 : x - 2;
  const paper = html`<rect
    x="${rounded(left)}"
    y="${rounded(y - 11)}"
    width="${rounded(width)}"
    height="14"
    fill="#fff"
    ${behind === 'box' ? new Html('stroke="#000" stroke-width="1.2"') : []}
  />`;
  const weight = strong ? new Html(' font-weight="700"') : [];
  const at = html`x="${rounded(x)}" y="${rounded(y)}" text-anchor="${anchor}"`;
  const turn = turned ? html` transform="rotate(-90 ${rounded(x)} ${rounded(y)})"` : [];
  return html`${behind ? paper : []}<text ${at} fill="#000" ${weight}${turn}>${text}</text>`;
}

function strokeOf(line: Line, dash = strokes[line].dash): Html {
  const dashes = dash === undefined ? '' : ` stroke-dasharray="${dash}"`;
  return new Html(`stroke="#000" stroke-width="${strokes[line].width}" stroke-linejoin="round"${dashes}`);
}

const rounded = (value: number) => Math.round(value * 100) / 100;
