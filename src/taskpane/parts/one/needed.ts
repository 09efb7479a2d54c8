import type { Finding } from '../../../core/check/finding.js';
import type { OpenCell } from '../../../core/check/rowFact.js';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { isOfStation } from '../../../core/press/item/isOfStation.js';
import { pressItems } from '../../../core/press/item/pressItem.js';
import { cellName } from '../../../core/say/cellWords.js';

/** What stands between a part and its OK: values of the press, and cells of the part, that are blank. */
export interface Needed {
  items: PressItemKey[];
  /** By their headings. */
  cells: string[];
}

/** The blank values that the open findings of a part wait for, each once; of a station not known, the station alone. */
export function neededOf(findings: readonly Finding[]): Needed {
  const open = findings.filter(({ outcome }) => outcome === 'open');
  const items = open.flatMap((finding) => (finding.rule === 'blank item' ? finding.item : []));
  const stations = items.flatMap((key) => {
    const item = pressItems.find((each) => each.key === key);
    return item?.kind === 'station' ? item : [];
  });
  const isAsked = (key: PressItemKey) =>
    !stations.some((station) => station.key !== key && isOfStation(nameOf(key), station.name));
  return {
    items: [...new Set(items)].filter(isAsked),
    cells: [...new Set(open.flatMap(cellsOf).map(cellName))],
  };
}

function cellsOf(finding: Finding): readonly OpenCell[] {
  switch (finding.rule) {
    case 'blank cell':
      return [finding.cell];
    case 'distance':
    case 'reach open':
      return finding.missing;
    default:
      return [];
  }
}

function nameOf(key: PressItemKey): string {
  return pressItems.find((item) => item.key === key)?.name ?? key;
}
