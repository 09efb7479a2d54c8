// What must hold for every row: nearer or larger is never better, a part turned around is the same part, and no clearance
// of a part is left out.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FindingOf } from '../../../src/core/check/finding.js';
import { verdicts } from '../../../src/core/check/verdict.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { noteOf } from '../../../src/core/say/noteOf.js';
import { shopWith } from '../../support/sampleShop.js';
import { type Cells, wholeRow } from './support/randomRow.js';

const shop = shopWith({
  'Punch throat': 'none',
  'Flat shear': 'no',
  'Bend length': 30,
  'Bend V openings': '1, 2, 3',
  'Punch largest hole': 3,
  'Heaviest bar': 'none',
});

function check(cells: Cells) {
  const result = checkRow(Object.values(cells), readHeadings(Object.keys(cells)), shop);
  if (result.blank) throw new Error('the row is blank');
  return result;
}

const rank = (cells: Cells) => verdicts.indexOf(check(cells).verdict);
const told = (cells: Cells) => `${JSON.stringify(cells)}: ${noteOf(check(cells), 'in')}`;

/** A wide plate, so that what is nearer to one edge is not farther from another that matters. */
const wide: Cells = {
  Section: 'PL3/8X60',
  Grade: 'A36',
  Press: 'Bay A',
  'Cut by': 'saw',
  Length: 120,
  Hole: '13/16',
  Bolt: '3/4',
  Holes: 3,
  Edge: 6,
  End: 6,
  Pitch: 6,
  'Edge kind': 'sheared',
  'End kind': 'sheared',
};
const size = (least: number, most: number) =>
  fc.integer({ min: least * 32, max: most * 32 }).map((parts) => parts / 32);

describe('nearer or larger is never better', () => {
  it.each<[string, [number, number], 'nearer' | 'larger']>([
    ['Edge', [0.25, 4], 'nearer'],
    ['End', [0.25, 4], 'nearer'],
    ['Pitch', [0.25, 5], 'nearer'],
    ['Hole', [0.75, 2.5], 'larger'],
  ])('in %s', (heading, [least, most], worse) => {
    fc.assert(
      fc.property(size(least, most), size(least, most), (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const [bad, good] = worse === 'nearer' ? [low, high] : [high, low];
        const [worseRow, betterRow] = [bad, good].map((value): Cells => ({ ...wide, [heading]: value }));
        if (!worseRow || !betterRow) return;
        expect(rank(worseRow), `${told(worseRow)}\n${told(betterRow)}`).toBeLessThanOrEqual(rank(betterRow));
      }),
      { numRuns: 300 },
    );
  });

  it('in the place of a second group, of a notch and of a bend', () => {
    const second: Cells = { ...wide, Holes: 1, 'Hole 2': '13/16', 'Bolt 2': '3/4', 'Edge 2': 6 };
    const notched: Cells = { ...wide, Holes: 1, End: 30, 'Notch width': 2, 'Notch depth': 2 };
    const bent: Cells = { ...wide, Holes: 1, End: 30, 'Bend length': 20 };
    fc.assert(
      fc.property(size(0, 8), size(0, 8), (a, b) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)];
        for (const at of [
          (mm: number): Cells => ({ ...second, 'End 2': `left ${6 + mm}` }),
          (mm: number): Cells => ({ ...notched, Edge: 2.5, 'Notch at': `bottom edge ${30 + mm}` }),
          (mm: number): Cells => ({ ...bent, 'Bend at': `left end ${30 + mm}` }),
        ]) {
          expect(rank(at(near)), `${told(at(near))}\n${told(at(far))}`).toBeLessThanOrEqual(rank(at(far)));
        }
      }),
      { numRuns: 100 },
    );
  });
});

const otherEnd = { left: 'right', right: 'left' } as const;
const otherSide = { bottom: 'top', top: 'bottom' } as const;

/** A place of a flat part as it is seen from the other side of the drawing, end for end or edge for edge. */
function turnedPlace(text: string, ends: boolean, lengthIn: number): string {
  return text
    .split(' ')
    .map((word, at, words) => {
      if (ends && word in otherEnd) return otherEnd[word as 'left'];
      if (!ends && word in otherSide) return otherSide[word as 'top'];
      // Along an edge places are from the left end.
      return ends && words[at - 1] === 'edge' && words.length === 3 ? String(lengthIn - Number(word)) : word;
    })
    .join(' ');
}

describe('a flat part turned around', () => {
  const plain = wholeRow.filter(({ given }) => /^(?:PL|FB)/.test(String(given.Section)));

  function turned(cells: Cells, ends: boolean): Cells {
    const out: Cells = { ...cells };
    for (const suffix of ['', ' 2']) {
      const key = `${ends ? 'End' : 'Edge'}${suffix}`;
      const value = out[key];
      if (value === undefined || value === null) continue;
      out[key] = turnedPlace(String(value), ends, 0);
    }
    // A bend is placed from the end or edge that it is named by, so that only its name changes.
    const bend = out['Bend at'];
    if (typeof bend === 'string') out['Bend at'] = bend.replace(/^\w+/, (word) => turnedPlace(word, ends, 0));
    for (const key of ['Notch at', 'Clip at', 'Long side']) {
      const value = out[key];
      if (typeof value === 'string') out[key] = turnedPlace(value, ends, Number(cells.Length));
    }
    if (ends) {
      out['Miter right'] = cells['Miter left'] ?? null;
      out['Miter left'] = null;
    }
    return out;
  }

  it.each([true, false])('has the same word and margins (end for end: %s)', (ends) => {
    fc.assert(
      fc.property(plain, ({ given, places }) => {
        const cells: Cells = { ...given, ...places, Length: Math.max(8, Number(places.Length)) };
        for (const key of ['Edge', 'Edge 2', 'End', 'End 2']) {
          const side = key.startsWith('End') ? 'left' : 'bottom';
          if (/^[\d.]/.test(String(cells[key]))) cells[key] = `${side} ${cells[key]}`;
        }
        const [own, other] = [check(cells), check(turned(cells, ends))];
        expect(other.verdict, `${told(cells)}\n${told(turned(cells, ends))}`).toBe(own.verdict);
        // Of a part that is one of several the findings are those of one of them.
        const isOne = cells['Miter left'] === null || 'Long side' in cells;
        if (isOne) expect(margins(other.findings)).toEqual(margins(own.findings));
      }),
      { numRuns: 300 },
    );
  });

  function marginMm({ outcome, given, limit }: FindingOf<'distance'>): number {
    const mm = outcome === 'failed' ? given.most - limit.least : given.least - limit.most;
    return Math.abs(mm) < 1e-6 ? 0 : mm;
  }

  function margins(findings: ReturnType<typeof check>['findings']): string[] {
    return findings
      .flatMap((finding) =>
        // Of holes that are held far apart it is not told how far.
        finding.rule === 'distance' && (finding.outcome !== 'held' || finding.kind.startsWith('edge'))
          ? [`${finding.kind} ${finding.outcome} ${finding.group} ${marginMm(finding).toFixed(5)}`]
          : [],
      )
      .sort();
  }
});

describe('no clearance is left out', () => {
  it('every hole is checked against every edge, and every two holes of a face against each other', () => {
    const count = fc.integer({ min: 1, max: 30 });
    fc.assert(
      fc.property(count, count, (first, second) => {
        const cells: Record<string, CellValue> = {
          ...wide,
          Length: 200,
          Holes: first,
          'Hole 2': '13/16',
          'Bolt 2': '3/4',
          'Holes 2': second,
          'Edge 2': 8,
          'End 2': 6,
          'Pitch 2': 2.5,
          Pitch: 2.5,
        };
        const { findings } = check(cells);
        const of = (kind: string) =>
          findings.reduce(
            (sum, each) => sum + (each.rule === 'distance' && each.kind === kind ? each.pairs : 0),
            0,
          );
        expect(of('edge by code')).toBe(4 * (first + second));
        expect(of('edge by practice')).toBe(4 * (first + second));
        for (const finding of findings) {
          expect(['held', 'failed', 'open', 'not applicable']).toContain(finding.outcome);
        }
      }),
      { numRuns: 60 },
    );
  });
});
