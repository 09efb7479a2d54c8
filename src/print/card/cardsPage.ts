import type { Card } from '../../core/card/cardOf.js';
import type { Shop } from '../../core/shop/readShop.js';
import { html, type Html, styleElement } from '../html.js';
import { cardHtml, type CardMarkup, type Job } from './cardHtml.js';
import { cutSheets } from './cutSheets.js';
import { cardStyle } from './cardStyle.js';

/**
 * A page of cards, two on a sheet; one that needs it has a sheet of its own; then the cuts of each press. Without its style where the page it is
 * shown in allows no style as text.
 */
export function cardsPage(cards: readonly Card[], shop: Shop, job: Job, style = cardStyle): string {
  const sheets = sheetsOf(cards.map((card) => cardHtml(card, shop, job)));
  const page = html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width" />
        <title>Cards of ${job.name}</title>
        ${styleElement(style)}
      </head>
      <body>
        <main>
          ${sheets.map((own) => html`<div class="sheet">${own}</div>`)}
          ${cutSheets(cards, shop, job).map((own) => html`<div class="sheet">${own}</div>`)}
        </main>
      </body>
    </html>`;
  return page.text;
}

/** In their order: halves in pairs, what needs a page alone. */
function sheetsOf(markups: readonly CardMarkup[]): Html[][] {
  const sheets: { cards: Html[]; open: boolean }[] = [];
  for (const { card, half } of markups) {
    const last = sheets.at(-1);
    if (half && last?.open) {
      last.cards.push(card);
      last.open = false;
    } else sheets.push({ cards: [card], open: half });
  }
  return sheets.map(({ cards }) => cards);
}
