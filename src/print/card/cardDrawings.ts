import type { Card } from '../../core/card/cardOf.js';
import type { FaceId } from '../../core/part/part.js';
import { isSawn, type Section } from '../../core/section/section.js';
import { formatSizes } from '../../core/quantity/formatLength.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type CardDrawing, cardDrawing } from '../../drawing/card/cardDrawing.js';
import type { HoleSetting } from '../../drawing/part/settingMarks.js';
import { endViewOf } from '../../drawing/card/endView.js';
import { html, type Html } from '../html.js';
import { svg } from '../svg.js';

/** The drawings of a card: a face of the part each, and the end views. */
export interface CardDrawings {
  drawings: Html[];
  said: string[];
  height: number;
}

export const cardWidth = 686;
const gap = 6;
const captionHeight = 14;
/** Room for the width of the part in half a page. */
const tallest = 108;

export function cardDrawings(card: Card, shop: Shop): CardDrawings {
  const { part, head } = card;
  const section = part?.row.section;
  if (!part || !section || isSawn(section)) return { drawings: [], said: [], height: 0 };
  const faces: readonly (FaceId | undefined)[] = part.faces.length > 0 ? part.faces : [undefined];
  const isPair = faces.length === 2;
  const room = isPair ? (cardWidth - gap) / 2 : cardWidth;
  const drawn = faces.map((face) => {
    const end = endViewOf(section, face ?? 'leg A', shop.unit);
    const drawing = cardDrawing({
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
    const caption = isPair || faces.length > 1 ? faceWords(section, face, shop) : '';
    return { drawing, end, caption };
  });
  const heights = drawn.map(
    ({ drawing, end, caption }) =>
      Math.max(drawing.height, end?.height ?? 0) + (caption === '' ? 0 : captionHeight),
  );
  return {
    drawings: drawn.flatMap(({ drawing, end, caption }) => [
      figure(drawing, `${head.mark} on the press`, caption),
      ...(end ? [svg(end, `End view: ${end.words}`)] : []),
    ]),
    said: [...new Set(drawn.flatMap(({ drawing: { said } }) => said))],
    height: isPair ? Math.max(...heights) : heights.reduce((sum, each) => sum + each, 0),
  };
}

function figure(drawing: CardDrawing, label: string, caption: string): Html {
  const words = caption === '' ? [] : [html`<figcaption>${caption}</figcaption>`];
  return html`<figure>${words}${svg(drawing, label)}</figure>`;
}

function faceWords(section: Section, face: FaceId | undefined, { unit }: Shop): string {
  if (section.kind !== 'angle') return face ?? '';
  const own = face === 'leg B' ? section.legBMm : section.legAMm;
  const isEqual = section.legAMm === section.legBMm;
  if (isEqual) return face === 'leg B' ? 'other leg' : 'one leg';
  return `leg ${formatSizes([own], unit)}`;
}

/** The settings of the steps, by the holes they make. */
function settingsOf({ body }: Card): HoleSetting[] {
  if (body.is !== 'steps') return [];
  return body.steps.flatMap(({ setting, holes = [] }) =>
    setting === undefined ? [] : holes.map((hole) => ({ ...hole, number: setting })),
  );
}
