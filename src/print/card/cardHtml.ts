import type { Card } from '../../core/card/cardOf.js';
import { sentenceInCell } from '../../core/inputError.js';
import { isInvented } from '../../core/press/isInvented.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { caution, cautionWords } from '../../core/say/cautionWords.js';
import { barLength } from '../../core/say/barLength.js';
import { sentencesOf } from '../../core/say/sentencesOf.js';
import { placesNotGiven } from '../../core/say/stepWords.js';
import type { Shop } from '../../core/shop/readShop.js';
import { html, type Html, wholeSizes } from '../html.js';
import { cardDrawings } from './cardDrawings.js';
import { type CardText, isHalf } from './cardSize.js';
import { stepLine } from './stepLine.js';

/** What the caller knows of a set of cards. */
export interface Job {
  /** The name of the file. */
  name: string;
  date: string;
}

/** A card as markup, and whether it fits in half a page. */
export interface CardMarkup {
  card: Html;
  half: boolean;
}

export function cardHtml(card: Card, shop: Shop, job: Job): CardMarkup {
  const { narrow, wide, said, heights } = cardDrawings(card, shop);
  const text = textOf(card, said, shop.unit);
  const half = isHalf(text, heights);
  const classes = half ? 'card' : 'card whole';
  return {
    half,
    card: html`<section class="${classes}">
      ${headHtml(card, job, shop)} ${wide} ${text.said.map((words) => html`<p class="said">${words}</p>`)}
      ${text.near.map((words) => html`<p class="near">${words}</p>`)}
      <div class="flow">${narrow}${stepsHtml(card, text)}</div>
      ${reasonsHtml(text)}
      <footer class="foot">
        <b>${text.cautions.join(' ')}</b> ${caution} <span class="stamp">${shop.stamp}</span>
      </footer>
    </section>`,
  };
}

function headHtml({ head, press, verdict, bars, next }: Card, job: Job, { presses, unit }: Shop): Html {
  const invented = presses.some((each) => each.name === press && isInvented(each));
  const facts: [string, string][] = [
    ['Press', invented ? `${press}: INVENTED, do not work from this card` : (press ?? '')],
    ['Drawing', head.drawing],
    ['Rev', head.revision],
    ['Bars', bars ? `${bars.count} × ${barLength(bars.lengthMm, unit)}` : ''],
    ['Next', next ?? ''],
    ['Job', job.name],
    ['Date', job.date],
  ];
  const piece = [head.section, head.grade, head.length].filter((text) => text !== '').join(' · ');
  return html`<header>
    <div class="head">
      <span class="mark">${head.mark === '' ? 'No mark' : head.mark}</span>
      <span class="qty">× ${head.qty}</span>
      <span class="piece">${piece}</span>
      <span class="verdict">${verdict}</span>
    </div>
    <dl class="facts">
      ${facts
        .filter(([, value]) => value !== '')
        .map(
          ([name, value]) =>
            html`<div>
              <dt>${name}</dt>
              <dd>${value}</dd>
            </div>`,
        )}
    </dl>
  </header>`;
}

function textOf(card: Card, said: readonly string[], unit: LengthUnit): CardText {
  const { body, near, cautions, part, head } = card;
  const typed = { groups: part?.row.groups ?? [], length: head.length };
  return {
    said: [...said],
    near: sentencesOf(near, unit).map((sentence) => `Caution: ${sentence}`),
    steps: body.is === 'steps' ? body.steps.map((step) => stepLine(step, typed, unit)) : [],
    reasons: reasonsOf(card, unit),
    cautions: cautions.map(cautionWords),
  };
}

function reasonsOf({ body, result }: Card, unit: LengthUnit): string[] {
  switch (body.is) {
    case 'steps':
      return [];
    case 'reasons':
      return sentencesOf(result.findings, unit);
    case 'places not given':
      return [placesNotGiven(body), ...sentencesOf(result.findings, unit)];
    case 'refused':
      return [sentenceInCell(body.failure)];
  }
}

function stepsHtml({ body }: Card, { steps }: CardText): Html[] {
  if (body.is !== 'steps') return [];
  let at = 0;
  const lines = body.steps.map(({ setting }, index) => {
    const number =
      setting === undefined ? html`<b class="at">${(at += 1)}</b>` : html`<b class="no">${setting}</b>`;
    return html`<li>
      ${number}<b>${steps[index]?.title ?? ''}</b> ${wholeSizes(steps[index]?.words ?? '')}
    </li>`;
  });
  return [
    html`<ol class="steps">
      ${lines}
    </ol>`,
  ];
}

function reasonsHtml({ reasons }: CardText): Html[] {
  if (reasons.length === 0) return [];
  return [
    html`<ul class="reasons">
      ${reasons.map((text) => html`<li>${wholeSizes(text)}</li>`)}
    </ul>`,
  ];
}
