import { atMost } from '../atMost.js';
import type { Finding, Verdict } from '../press/finding.js';
import { roundingShare } from '../press/limit.js';
import { formatLength } from '../quantity/formatLength.js';
import { boltOfHole } from '../rule/boltOfHole.js';
import { boltHole } from '../rule/boltHole.js';
import type { BoltSize } from '../rule/boltSize.js';
import { type EdgeFit, type EdgeKind, leastEdgeDistanceMm } from '../rule/edgeDistance.js';
import { greatestEdgeDistanceMm } from '../rule/greatestEdge.js';
import { leastPitchMm } from '../rule/pitch.js';
import { leastWebMm } from '../rule/pressWeb.js';
import type { AnySection } from '../section/section.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import { leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';
import type { Working } from '../working/working.js';
import { check, type Check } from './check.js';
import { columnsOf } from './holeLayout.js';
import type { HolePlace } from './holePlace.js';
import { holesOnPart, type Piece } from './holesOnPart.js';
import type { HoleGroup } from './rowJob.js';

const practiceSource = 'common practice, no source';

export interface Makeable {
  check: Check;
  understood: string[];
}

/**
 * Whether a hole group may be made as drawn, whatever the press: whether it lies on the part, distance to edges and ends,
 * and between holes, by the shop's code for the bolt, and by press practice for the steel left over.
 */
export function makeableCheck(
  section: AnySection,
  group: HoleGroup,
  place: HolePlace,
  piece: Piece,
  shop: Shop,
  asked: boolean,
): Makeable {
  const understood: string[] = [];
  const made = check(asked, group.title, (working) => {
    const groupCheck = new GroupCheck(section, group, place, piece, shop, understood, working);
    groupCheck.run();
    return groupCheck.findings.map((finding) => ({ ...finding, holeGroup: group.title }));
  });
  return { check: made, understood };
}

class GroupCheck {
  readonly findings: Finding[] = [];

  constructor(
    private readonly section: AnySection,
    private readonly group: HoleGroup,
    private readonly place: HolePlace,
    private readonly piece: Piece,
    private readonly shop: Shop,
    private readonly understood: string[],
    private readonly working: Working | undefined,
  ) {}

  private get code() {
    return setting(this.shop, 'edgeCode');
  }

  run(): void {
    const bolt = this.bolt();
    const fit = bolt ? this.fit(bolt) : undefined;
    const edgeKind = this.group.edgeKind ?? this.longEdge();
    const onPart = holesOnPart(this.group, this.place, this.piece, this.shop.unit);
    this.findings.push(...onPart.findings);
    const edges = onPart.offAcross ? [] : this.edgeDistances();
    const edgeFit = fit && this.fitTowards(fit, 'along');
    for (const edgeMm of edges) this.edge('edge distance', edgeMm, edgeKind, bolt, edgeFit);
    const endKind = this.group.endKind ?? this.endKind();
    const endFit = fit && this.fitTowards(fit, 'across');
    if (this.group.endMm !== undefined) this.edge('end distance', this.group.endMm, endKind, bolt, endFit);
    if (onPart.farEndMm !== undefined) this.edge('far end distance', onPart.farEndMm, endKind, bolt, endFit);
    const read = [
      edges.length > 0 ? `edge ${edgeKind}` : '',
      this.group.endMm === undefined ? '' : `end ${endKind}`,
    ];
    const kinds = read.filter((text) => text !== '').join(', ');
    if (this.group.holesAt) this.understood.push('holes where Holes at says');
    else if (!onPart.offAcross || kinds !== '')
      this.understood.push(kinds === '' ? 'no edge or end distance given, so none was checked' : kinds);
    this.nearestEdge(edges, bolt);
    if (this.group.pitchMm !== undefined) this.spacing('pitch', this.group.pitchMm, bolt);
    else if (columnsOf(this.group, this.place) > 1 && !this.group.pitchesMm && !this.group.holesAt)
      this.understood.push('no pitch given, so none was checked');
    if (this.place.element === 'plate' && this.group.gageMm !== undefined)
      this.spacing('gage', this.group.gageMm, bolt);
  }

  /** The bolt of the row, or the one whose standard hole this is. */
  private bolt(): BoltSize | undefined {
    const { bolt, hole } = this.group;
    if (bolt && leastDimensionMm(hole) < bolt.diameterMm * (1 - roundingShare)) {
      const size = formatLength(leastDimensionMm(hole), this.shop.unit);
      const note = `${this.group.title}: a hole of ${size} ${this.shop.unit} does not take bolt ${bolt.name}. Correct one of them.`;
      this.findings.push({ verdict: 'Check input', governs: this.group.title, note });
    }
    if (this.group.noBolt) return undefined;
    if (bolt || hole.shape !== 'round') return bolt;
    const code = this.code === 'EN' ? 'EN' : 'AISC';
    const assumed = boltOfHole({ diameterMm: hole.diameterMm, unit: this.shop.unit, code });
    this.understood.push(
      assumed
        ? `bolt ${assumed.name} taken from the hole`
        : 'no bolt given, so only press practice was checked at edges',
    );
    return assumed;
  }

  /** A hole between two kinds counts as the larger kind; a slot is taken with its length towards the edge. */
  private fit(bolt: BoltSize): EdgeFit {
    const { hole } = this.group;
    const code = this.code === 'EN' ? 'EN' : 'AISC';
    if (hole.shape === 'slot') {
      const short = boltHole({ bolt, fit: 'short slot', code }).lengthMm ?? 0;
      if (this.group.slot === undefined) this.understood.push('slot taken with its length towards the edge');
      return hole.lengthMm <= short * (1 + roundingShare) ? 'short slot' : 'long slot';
    }
    const standard = boltHole({ bolt, fit: 'standard', code }).widthMm;
    if (punchDiagonalMm(hole) > boltHole({ bolt, fit: 'oversize', code }).widthMm * (1 + roundingShare)) {
      this.understood.push(`hole larger than oversize for bolt ${bolt.name}, its edges taken as oversize`);
    }
    return punchDiagonalMm(hole) <= standard * (1 + roundingShare) ? 'standard' : 'oversize';
  }

  /** A slot whose direction the row gives needs its increment only at the edges that its length runs towards. */
  private fitTowards(fit: EdgeFit, along: 'along' | 'across'): EdgeFit {
    if (this.group.slot !== along) return fit;
    if (fit === 'short slot') return 'short slot along';
    return fit === 'long slot' ? 'long slot along' : fit;
  }

  /** A sawn or gas-cut end is machine cut; where nothing is said of the cut, it is taken as sheared. */
  private endKind(): EdgeKind {
    const { cutBy } = this.piece;
    if (cutBy === 'saw' || cutBy === 'burn') return 'machine cut';
    return this.section.kind === 'channel' ? 'machine cut' : 'sheared';
  }

  private longEdge(): EdgeKind {
    return this.section.kind === 'flat' && this.section.form === 'plate' ? 'sheared' : 'rolled';
  }

  /** The given edge distance and, with a gage between two lines of a plate, what is left on the far side. */
  private edgeDistances(): number[] {
    const { edgeMm, gageMm, widthMm, element } = this.place;
    if (edgeMm === undefined) return [];
    if (element !== 'plate' || gageMm === undefined) return [edgeMm];
    return [edgeMm, widthMm - edgeMm - gageMm];
  }

  /** Too far from every edge is no failure: it is told beside what was read. */
  private nearestEdge(edgesMm: readonly number[], bolt: BoltSize | undefined): void {
    const { endMm } = this.group;
    const { element, thicknessMm } = this.place;
    if (!bolt || endMm === undefined || edgesMm.length === 0 || element === 'web') return;
    const nearestMm = Math.min(endMm, ...edgesMm);
    const input = { thicknessMm, code: this.code, system: bolt.system };
    const greatestMm = greatestEdgeDistanceMm(input, this.working);
    if (atMost(nearestMm, greatestMm)) return;
    const size = (mm: number) => `${formatLength(mm, this.shop.unit)} ${this.shop.unit}`;
    this.understood.push(
      `caution: ${size(nearestMm)} from bolt to nearest edge is over ${size(greatestMm)}, the greatest by ${this.code}`,
    );
  }

  private edge(
    what: string,
    distanceMm: number,
    kind: EdgeKind,
    bolt: BoltSize | undefined,
    fit: EdgeFit | undefined,
  ) {
    const byCode =
      bolt && fit ? leastEdgeDistanceMm({ bolt, edge: kind, code: this.code, fit }, this.working) : 0;
    const rule = bolt ? `${this.code}, ${kind} edge, bolt ${bolt.name}` : '';
    this.least('Edge short', what, distanceMm, byCode, rule, 1 / 2);
  }

  private spacing(what: string, distanceMm: number, bolt: BoltSize | undefined) {
    const byCode = bolt ? leastPitchMm({ bolt, code: this.code }, this.working) : 0;
    this.least('Holes too close', what, distanceMm, byCode, bolt ? `${this.code}, bolt ${bolt.name}` : '', 1);
  }

  /** The larger of the code's distance and what press practice needs; `share` of the hole lies within it. */
  private least(
    verdict: Verdict,
    what: string,
    distanceMm: number,
    byCodeMm: number,
    rule: string,
    share: number,
  ) {
    const holeMm = punchDiagonalMm(this.group.hole);
    const { thicknessMm } = this.place;
    const webMm = leastWebMm(
      { thicknessMm, holeDimensionMm: leastDimensionMm(this.group.hole) },
      this.working,
    );
    const byPracticeMm = webMm + holeMm * share;
    const leastMm = Math.max(byCodeMm, byPracticeMm);
    const enough = distanceMm >= leastMm * (1 - roundingShare);
    const byCode = byCodeMm >= byPracticeMm;
    this.working?.step({
      title: `${this.group.title}: ${what}`,
      formula: share === 1 ? 'p ≥ max(code, w + d)' : 'e ≥ max(code, w + d / 2)',
      values: [
        { symbol: share === 1 ? 'p' : 'e', meaning: what, kind: 'length', value: distanceMm },
        { symbol: 'code', meaning: 'least by the code', kind: 'length', value: byCodeMm },
        { symbol: 'w', meaning: 'least steel left', kind: 'length', value: webMm },
        { symbol: 'd', meaning: 'hole, its largest dimension', kind: 'length', value: holeMm },
      ],
      result: {
        symbol: 'verdict',
        meaning: 'outcome of the check',
        kind: 'text',
        value: enough ? 'OK' : verdict,
      },
      source:
        rule === ''
          ? practiceSource
          : `${rule} (code); ${practiceSource} (w + ${share === 1 ? 'd' : 'd / 2'})`,
    });
    if (enough) return;
    const practice = 'press practice: the steel left must be at least the thickness and half the hole';
    const size = (mm: number) => `${formatLength(mm, this.shop.unit)} ${this.shop.unit}`;
    const note = `${this.group.title}: ${what} ${size(distanceMm)} is under ${size(leastMm)} (${byCode ? rule : practice}).`;
    this.findings.push({ verdict, governs: what, note });
  }
}
