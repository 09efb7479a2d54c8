import type { Card } from '../../core/card/cardOf.js';
import { backGaugeCuts, type GaugeCut } from '../../core/cut/backGaugeCuts.js';
import type { Press } from '../../core/press/press.js';
import { formatNumber } from '../../core/quantity/formatLength.js';
import { type LengthUnit, radianPerDegree } from '../../core/quantity/units.js';
import { gaugeSettingWords, overReachSentence, strokeStartWords } from '../../core/say/backGaugeWords.js';
import { barLength } from '../../core/say/barLength.js';
import { size } from '../../core/say/sizes.js';
import { nameKey } from '../../core/shop/table.js';
import type { Shop } from '../../core/shop/readShop.js';
import { html, type Html } from '../html.js';
import type { Job } from './cardHtml.js';

/** A page for each press of the cards that cuts some of them: what its back gauge is set to, longest first. */
export function cutSheets(cards: readonly Card[], shop: Shop, job: Job): Html[] {
  const made = cards.filter(({ body }) => body.is === 'steps');
  const names = new Set(made.map(({ press }) => nameKey(press ?? null)));
  return shop.presses
    .filter(({ name }) => names.has(nameKey(name)))
    .flatMap((press) => cutSheet(made, press, shop, job));
}

function cutSheet(made: readonly Card[], press: Press, { unit, stamp }: Shop, job: Job): Html[] {
  const parts = made.map(({ head, result, part }) => ({
    mark: head.mark,
    result,
    ...(part ? { part } : {}),
  }));
  const cuts = backGaugeCuts(parts, press);
  if (cuts.sections.length === 0) return [];
  const { reachMm } = cuts;
  const reach =
    reachMm === undefined
      ? 'How far the back gauge reaches is not known.'
      : reachMm === Infinity
        ? 'The back gauge has no limit.'
        : `The back gauge reaches ${size(reachMm, unit)}.`;
  const over = overReachSentence(cuts, unit);
  return [
    html`<section class="cuts">
      <h1>Cuts at the back gauge, ${press.name}</h1>
      <p>${job.name} · ${job.date} · ${stamp}</p>
      <p>${reach}</p>
      ${over === undefined ? [] : [html`<p class="near">${over}</p>`]}
      <p>
        Stroke: ${[...new Set(cuts.sections.flatMap((each) => each.cuts.map(strokeStartWords)))].join('; ')}.
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col" class="number">Length</th>
            <th scope="col">Ends</th>
            <th scope="col">Gauge</th>
            <th scope="col">Stroke</th>
            <th scope="col">Pieces</th>
          </tr>
        </thead>
        ${cuts.sections.map(
          (section) =>
            html`<tbody>
              <tr>
                <th colspan="5" scope="rowgroup">${section.section}, ${section.grade}</th>
              </tr>
              ${section.cuts.map((cut) => cutRow(cut, unit))}
            </tbody>`,
        )}
      </table>
    </section>`,
  ];
}

/** Told in full above the table. */
const strokes: Record<GaugeCut['starts'], string> = { touch: 'touch', pedal: 'pedal', unknown: 'not known' };

function cutRow(cut: GaugeCut, unit: LengthUnit): Html {
  const pieces = cut.pieces.map(({ mark, qty }) => `${qty} × ${mark === '' ? 'no mark' : mark}`);
  const { setting } = cut;
  const set = 'mm' in setting ? barLength(setting.mm, unit) : gaugeSettingWords(cut, unit);
  const gauge = cut.reach === 'over' ? 'over its reach: mark out' : set;
  return html`<tr>
    <td class="number">
      <b>${barLength(cut.lengthMm, unit)}</b>
    </td>
    <td>${endWords(cut)}</td>
    <td>${gauge}</td>
    <td>${strokes[cut.starts]}</td>
    <td>${pieces.join(', ')}</td>
  </tr>`;
}

function endWords({ miterLeftRad, miterRightRad, hand }: GaugeCut): string {
  if (miterLeftRad === 0 && miterRightRad === 0) return 'square';
  const degrees = (rad: number) => `${formatNumber(rad / radianPerDegree, 1)}°`;
  const hands = typeof hand === 'string' && hand !== 'none' ? `, hand ${hand}` : '';
  return `${degrees(miterLeftRad)} left, ${degrees(miterRightRad)} right${hands}`;
}
