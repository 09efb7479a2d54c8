import type { Finding } from '../../check/finding.js';
import type { RowFinding } from '../../check/rowFact.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import type { PlacedGroup, ReadyRow } from '../job/readyRow.js';
import { edgeFindings } from './edgeFindings.js';
import { type HeldGroup, heldGroup } from './heldGroup.js';
import { jointFindings } from './jointFindings.js';
import type { Layout, Layouts } from './layoutOf.js';
import { bendsOnPart } from './bendsOnPart.js';
import { cutsOnAngle } from './cutsOnAngle.js';
import { cutsOnMiter } from './cutsOnMiter.js';
import { sliverFindings } from './sliverFindings.js';
import { openWork } from './openWork.js';
import { pairFindings } from './pairFindings.js';
import { roomFindings } from './roomFindings.js';
import { workOnThePart } from './workOnThePart.js';

/**
 * Whether the part can be made as drawn, whatever the press: the row is laid out as geometry, and every clearance of its
 * holes to every edge, cut and other hole is checked against what the code and press practice ask. Every one ends as held,
 * failed or open. Source: geometry; each rule names its own.
 */
export function layoutFindings(row: ReadyRow, layouts: Layouts, shop: Shop): Finding[] {
  const impossible = workOnThePart(row);
  if (impossible.length > 0) return impossible;
  const code = setting(shop, 'edgeCode');
  const held = new Map<PlacedGroup, HeldGroup>();
  const heldOf = (placed: PlacedGroup) => {
    const known = held.get(placed) ?? heldGroup(placed, shop.unit, code);
    held.set(placed, known);
    return known;
  };
  const found = jointFindings(layouts, (layout) => {
    if (layout.problem) {
      return [{ rule: 'outline', outcome: 'failed', verdict: 'Check input', problem: layout.problem }];
    }
    return clearances(layout, row, heldOf, code);
  });
  return [...found, ...cutsOnAngle(row, shop.unit), ...cutsOnMiter(layouts), ...openWork(row)];
}

function clearances(
  layout: Layout,
  row: ReadyRow,
  heldOf: (placed: PlacedGroup) => HeldGroup,
  code: EdgeCode,
): RowFinding[] {
  const held = new Map<number, HeldGroup>();
  for (const { index, holes } of layout.groups) {
    const faces = row.places.find((placed) => placed.index === index)?.faces ?? [];
    const placed = faces.find(({ face }) => face.id === holes[0]?.face);
    if (placed) held.set(index, heldOf(placed));
  }
  const { faces, groups, endless } = layout;
  const laid = { row, faces, groups, held, code, endless };
  const { findings, slack } = edgeFindings(laid);
  const slivers = row.notches || row.clips ? sliverFindings(layout) : [];
  const bends = bendsOnPart(row, layout);
  return [...findings, ...pairFindings(laid), ...roomFindings(laid, slack), ...slivers, ...bends];
}
