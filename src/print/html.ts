import { sizePieces } from '../core/quantity/sizePieces.js';

const entities: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as a page may hold it: never markup. */
export function escapeHtml(text: string): string {
  return text.replaceAll(/[&<>"']/g, (character) => entities[character] ?? '');
}

/** What has been escaped already. */
export class Html {
  constructor(readonly text: string) {}
}

type Piece = string | number | Html | readonly Html[];

/** A template whose values are escaped, whatever they hold. */
export function html(parts: TemplateStringsArray, ...values: Piece[]): Html {
  const shown = (value: Piece) => {
    if (value instanceof Html) return value.text;
    return typeof value === 'object' ? value.map(({ text }) => text).join('') : escapeHtml(String(value));
  };
  return new Html(parts.reduce((text, part, at) => text + shown(values[at - 1] ?? '') + part));
}

/** The style of a page; none where it is shown where no style may stand as text. */
export function styleElement(style: string): Html[] {
  return style === '' ? [] : [new Html(`<style>${style}</style>`)];
}

/** Text whose sizes stay whole where lines break, by a class of the page's style. */
export function wholeSizes(text: string): Html[] {
  return sizePieces(text).map((piece, at) =>
    at % 2 === 0 ? html`${piece}` : html`<span class="unbroken">${piece}</span>`,
  );
}

/** The rule for it. */
export const wholeSizesRule = '.unbroken { white-space: nowrap; }';
