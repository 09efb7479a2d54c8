import type { Fill, Line, Shape } from '../drawing/drawing.js';
import { html, Html } from './html.js';

/** Black lines by their meaning: width, and dashes where they have them. */
const strokes: Record<Line, { width: number; dash?: string }> = {
  outline: { width: 2 },
  thin: { width: 0.9 },
  hidden: { width: 1.2, dash: '6 3' },
  centre: { width: 0.8, dash: '12 3 3 3' },
  heavy: { width: 4 },
};

const fills: Record<Fill, string> = { solid: '#000', paper: '#fff', hatch: '#bbb', stipple: '#ddd' };

/** A drawing as part of a page that prints, black on white; `label` says what it shows. */
export function svg(
  { width, height, shapes }: { width: number; height: number; shapes: readonly Shape[] },
  label: string,
): Html {
  const [w, h] = [Math.ceil(width), Math.ceil(height)];
  return html`<svg
    xmlns="http://www.w3.org/2000/svg"
    width="${w}"
    height="${h}"
    viewBox="0 0 ${w} ${h}"
    role="img"
    aria-label="${label}"
  >
    ${shapes.map(shapeHtml)}
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
    case 'text': {
      const { x, y, text, anchor = 'start', strong, behind } = shape;
      const halo = behind ? new Html(' stroke="#fff" stroke-width="4" paint-order="stroke"') : [];
      const weight = strong ? new Html(' font-weight="700"') : [];
      return html`<text
        x="${rounded(x)}"
        y="${rounded(y)}"
        text-anchor="${anchor}"
        fill="#000"
        ${weight}${halo}
        >${text}</text
      >`;
    }
  }
}

function strokeOf(line: Line, dash = strokes[line].dash): Html {
  const dashes = dash === undefined ? '' : ` stroke-dasharray="${dash}"`;
  return new Html(`stroke="#000" stroke-width="${strokes[line].width}" stroke-linejoin="round"${dashes}`);
}

const rounded = (value: number) => Math.round(value * 100) / 100;
