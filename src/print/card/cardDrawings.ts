import type { Card } from '../../core/card/cardOf.js';
import type { FaceId } from '../../core/part/part.js';
import { formatSizes } from '../../core/quantity/formatLength.js';
import { isSawn, type Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import { cardDrawing } from '../../drawing/card/cardDrawing.js';
import type { FaceDrawing } from '../../drawing/part/faceDrawing.js';
import { type EndView, endViewOf } from '../../drawing/part/endView.js';
import type { HoleSetting } from '../../drawing/part/settingMarks.js';
import { html, type Html } from '../html.js';
import { svg } from '../svg.js';

/** The drawings of a card, a face of the part each, with their heights in pixels. */
export interface CardDrawings {
  /** As wide as a column, above the steps in it. */
  narrow: Html[];
  /** As wide as the card, above both columns. */
  wide: Html[];
  said: string[];
  heights: { narrow: number[]; wide: number[] };
}

export const cardWidth = 686;
export const columnWidth = 333;
const gap = 6;
const captionHeight = 14;
/** Room for the width of the part. */
const tallest = 100;

export function cardDrawings(card: Card, shop: Shop): CardDrawings {
  const { part, head } = card;
  const section = part?.row.section;
  const drawn: CardDrawings = { narrow: [], wide: [], said: [], heights: { narrow: [], wide: [] } };
  if (!part || !section || isSawn(section)) return drawn;
  const faces: readonly (FaceId | undefined)[] = part.faces.length > 0 ? part.faces : [undefined];
  for (const face of faces) {
    const end = endViewOf(section, face ?? 'leg A', shop.unit);
    const within = (room: number) =>
      cardDrawing({
        job: part.row,
        section,
        face,
        unit: shop.unit,
        shop,
        length: head.length,
        settings: settingsOf(card),
        width: room - (end ? end.width + gap : 0),
        height: tallest,
      });
    const narrow = within(columnWidth);
    const isNarrow = card.body.is === 'steps' && narrow.beside.length === 0 && !narrow.tight;
    const drawing = isNarrow ? narrow : within(cardWidth);
    const caption = faces.length > 1 ? faceWords(section, face, shop) : '';
    const room = isNarrow ? 'narrow' : 'wide';
    drawn[room].push(figure(drawing, end, `${head.mark} on the press`, caption));
    drawn.said.push(...[...drawing.scale, ...drawing.beside].filter((words) => !drawn.said.includes(words)));
    const higher = Math.max(drawing.height, end?.height ?? 0);
    drawn.heights[room].push(higher + (caption === '' ? 0 : captionHeight) + gap);
  }
  return drawn;
}

function figure(drawing: FaceDrawing, end: EndView | undefined, label: string, caption: string): Html {
  const words = caption === '' ? [] : [html`<figcaption>${caption}</figcaption>`];
  const ends = end ? [svg(end, `End view: ${end.words}`)] : [];
  return html`<figure>
    ${words}
    <div class="drawings">${svg(drawing, label)}${ends}</div>
  </figure>`;
}

function faceWords(section: Section, face: FaceId | undefined, { unit }: Shop): string {
  if (section.kind !== 'angle') return face ?? '';
  if (section.legAMm === section.legBMm) return face === 'leg B' ? 'other leg' : 'one leg';
  return `leg ${formatSizes([face === 'leg B' ? section.legBMm : section.legAMm], unit)}`;
}

/** The settings of the steps, by the holes they make. */
function settingsOf({ body }: Card): HoleSetting[] {
  if (body.is !== 'steps') return [];
  return body.steps.flatMap(({ setting, holes = [] }) =>
    setting === undefined ? [] : holes.map((hole) => ({ ...hole, number: setting })),
  );
}
