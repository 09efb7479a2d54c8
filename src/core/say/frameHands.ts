import { shearHands, type ShearHands } from '../press/shearHands.js';
import { refuse } from '../inputError.js';
import { itemName } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { listWords } from './listWords.js';

const mostNamed = 3;

/**
 * Which presses make the two hands of miter that every piece of a frame of angles needs: their names, or what is not
 * known. Refuses where none makes both, with the reason of each.
 */
export function frameHands(presses: readonly Press[]): string {
  const found = presses.map((press) => ({ name: press.name, hands: shearHands(press) }));
  const able = found.filter(({ hands }) => hands.makes === 'both').map(({ name }) => name);
  if (able.length > 0) return listWords(able, 'or');
  const open = found.filter(({ hands }) => hands.makes === 'unknown');
  const named = open.length > 0 ? open : found;
  const reasons = named.slice(0, mostNamed).map(({ name, hands }) => `${name} ${reasonOf(hands)}`);
  const more = named.length - reasons.length;
  const text = [...reasons, ...(more > 0 ? [`and ${more} more`] : [])].join('; ');
  if (open.length > 0) return `not known: ${text}`;
  const problem = `each piece of a frame of angles has a miter of either hand, and no press makes both: ${text || 'the shop has none'}.`;
  return refuse(
    'Shop',
    '',
    problem,
    'Saw the pieces; give "in" or "mm" in place of the shop cell for their sizes.',
  );
}

function reasonOf(hands: ShearHands): string {
  switch (hands.makes) {
    case 'both':
      return 'makes both';
    case 'one':
      return `miters with the leg ${hands.leg} only`;
    case 'none':
      return hands.why === 'no station' ? 'has no angle shear' : 'cuts angles square only';
    case 'unknown':
      return `has ${itemName(hands.item)} ${hands.cell}`;
  }
}
