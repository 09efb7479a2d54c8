import { verdictKind } from '../../check/verdict.js';
import { slugMm } from '../../cut/backGaugeSetting.js';
import type { AnySection } from '../../section/section.js';
import { forSection } from '../../shop/bySection.js';
import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import { compareText } from './compareParts.js';
import type { JobPart, Kerf } from './stockJob.js';

/**
 * What a cut of a job takes: as the setting `Cut kerf` says; else the slug of the shear, the greatest of the presses that
 * its rows run on. A single blade takes nothing; of a saw, and of a press that does not say, nothing is known, and 0 is taken.
 */
export function kerfOf(
  section: AnySection,
  parts: readonly Pick<JobPart, 'press' | 'isSheared' | 'verdict'>[],
  shop: Shop,
): Kerf {
  const given = forSection(setting(shop, 'cutKerf') ?? [], section.designation);
  if (given !== undefined) return { mm: given, from: 'setting' };
  const runs = parts.filter(({ verdict }) => verdictKind(verdict) !== 'fails');
  const sheared = (runs.length > 0 ? runs : parts).filter(({ isSheared }) => isSheared);
  const presses = [...new Set(sheared.flatMap(({ press }) => press ?? []))];
  const slugs = presses
    .map((press) => ({ press: press.name, mm: slugMm({ section }, press) }))
    .sort((a, b) => (b.mm ?? 0) - (a.mm ?? 0) || compareText(a.press, b.press));
  const mm = slugs[0]?.mm ?? 0;
  const unknown = slugs.find((each) => each.mm === undefined);
  if (unknown) return { mm, from: 'slug not known', press: unknown.press };
  if (parts.some(({ isSheared }) => !isSheared)) return { mm, from: 'saw not known' };
  const [greatest] = slugs;
  return greatest && mm > 0
    ? { mm, from: 'slug of the press', press: greatest.press }
    : { mm, from: 'single blade' };
}
