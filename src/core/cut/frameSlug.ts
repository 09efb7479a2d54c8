import { refuse } from '../inputError.js';
import type { Press } from '../press/press.js';
import { pressValue } from '../press/press.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { shearHands } from './shearHands.js';

const sameMm = 1e-6;

/**
 * What a cut of a frame of angles loses on the presses that make both of its hands, in mm, where no kerf is given: the
 * slug they have in common; none where a press does not say. Refuses where they differ.
 * Source: common practice, no source; the slug is the press's own.
 */
export function frameSlugMm(presses: readonly Press[], unit: LengthUnit): number {
  const slugs = presses
    .filter((press) => shearHands(press).makes === 'both')
    .map((press) => ({ name: press.name, mm: slugOf(press) }));
  const [first] = slugs;
  const other = slugs.find(({ mm }) => first && Math.abs(mm - first.mm) > sameMm);
  if (!first || !other) return first?.mm ?? 0;
  const lost = [first, other].map(({ name, mm }) => `${name} ${formatLength(mm, unit)} ${unit}`).join(', ');
  return refuse(
    'Kerf',
    '',
    `the presses lose different slugs at a cut: ${lost}.`,
    `Give the slug you mean; for none give "${unit}" in place of the shop cell.`,
  );
}

function slugOf(press: Press): number {
  const slug = pressValue(press, 'angleShearSlug');
  return slug.state === 'value' ? slug.value : 0;
}
