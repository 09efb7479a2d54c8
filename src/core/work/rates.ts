import { InputError } from '../inputError.js';
import { inventedTimes } from '../press/item/inventedTimes.js';
import { itemName } from '../press/limit.js';
import { type Press, pressValue } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { type HandlingClass, readHandlingClasses } from '../shop/handlingClasses.js';
import { inventedSettings } from '../shop/costSettings.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';

/** What one of something takes, and whether the shop said so. */
export interface Rate {
  /** The item of the shop it comes from, as it stands there. */
  item: string;
  seconds: number;
  /** The shop has not given it. */
  invented: boolean;
}

/** Every coefficient of a row's time. */
export interface Rates {
  positionHit: Rate;
  advanceCut: Rate;
  markOutHole: Rate;
  deburr: Rate;
  stageBar: Rate;
  toolChange: Rate;
  holderChange: Rate;
  gaugeChange: Rate;
  firstPiece: Rate;
  pieceMark: Rate;
  handling: { item: string; classes: readonly HandlingClass[]; invented: boolean };
  /** Share of an hour in which the press works. */
  efficiency: number;
  /** Changes of tools are the run's, not the row's. */
  sharedSetup: boolean;
}

type TimedItem = Exclude<keyof typeof inventedTimes, 'stroke'>;

const secondsPerMinute = 60;
const heldInMinutes = new Set<TimedItem>(['toolChange', 'holderChange', 'gaugeChange']);

/** The coefficients of a press and its shop; refuses with the reason where a cell of one cannot be read. */
export function ratesOf(press: Press, shop: Shop): Rates {
  const rate = (key: TimedItem) => pressRate(press, key);
  const firstPiece = setting(shop, 'firstPieceMin');
  const pieceMark = setting(shop, 'pieceMarkS');
  const classes = setting(shop, 'handling');
  return {
    positionHit: rate('positionHit'),
    advanceCut: rate('advanceCut'),
    markOutHole: rate('markOutHole'),
    deburr: rate('deburr'),
    stageBar: rate('stageBar'),
    toolChange: rate('toolChange'),
    holderChange: rate('holderChange'),
    gaugeChange: rate('gaugeChange'),
    firstPiece: settingRate('firstPieceMin', firstPiece, secondsPerMinute),
    pieceMark: settingRate('pieceMarkS', pieceMark, 1),
    handling: {
      item: inventedSettings.handling.item,
      classes: classes ?? readHandlingClasses(inventedSettings.handling.value, 'Handling classes', 'mm'),
      invented: classes === undefined,
    },
    efficiency: setting(shop, 'efficiency'),
    sharedSetup: setting(shop, 'setup') === 'shared over a run',
  };
}

/** What one of something takes on a press; invented where its cell is blank. */
export function pressRate(press: Press, key: TimedItem): Rate {
  const item = itemName(key satisfies PressItemKey);
  const value = pressValue(press, key);
  if (value.state === 'bad') throw new InputError(value.failure);
  if (value.state === 'value') return { item, seconds: value.value, invented: false };
  if (value.state === 'none') return { item, seconds: 0, invented: false };
  const per = heldInMinutes.has(key) ? secondsPerMinute : 1;
  return { item, seconds: inventedTimes[key].value * per, invented: true };
}

function settingRate(key: 'firstPieceMin' | 'pieceMarkS', given: number | undefined, per: number): Rate {
  const { item, value } = inventedSettings[key];
  return { item, seconds: (given ?? value) * per, invented: given === undefined };
}
