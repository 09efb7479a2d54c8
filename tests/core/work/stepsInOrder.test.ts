import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { operatorSteps } from '../../../src/core/work/operatorSteps.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

type Part = Record<string, CellValue>;

function stepsOf(part: Part, press: PressCells = {}) {
  const shop = shopWith(press);
  const whole = { Grade: 'A36', Press: 'Bay A', ...part };
  const checked = checkedPart(Object.values(whole), readHeadings(Object.keys(whole)), shop);
  const steps = operatorSteps(checked, shop);
  return { verdict: checked.result.blank ? 'blank' : checked.result.verdict, steps };
}
const actionsOf = (part: Part, press?: PressCells) => {
  const { steps } = stepsOf(part, press);
  return steps.is === 'steps' ? steps.steps.map(({ action }) => action) : steps.is;
};

const plate = { Qty: 2, Section: 'PL3/8X8', Length: 12 };
const holes = { Hole: '13/16', Holes: 1, Bolt: 'none', Edge: 4, End: 6 };

describe('what an operator does', () => {
  it('locks out before every change of tools, and pulls the stock first', () => {
    const actions = actionsOf({
      ...{ ...plate, ...holes, 'Hole 2': '11/16', 'Holes 2': 1, 'Bolt 2': 'none', 'Edge 2': 4, 'End 2': 2 },
      ...{ 'Edge kind': 'sheared', 'End kind': 'sheared', 'Edge kind 2': 'sheared', 'End kind 2': 'sheared' },
    });
    expect(actions).toEqual([
      ...['pull stock', 'hold-down', 'stroke', 'back gauge', 'first piece', 'run'],
      ...['lock out', 'tools', 'align', 'stripper', 'stroke', 'gauge setting', 'first piece', 'run'],
      ...['lock out', 'tools', 'align', 'stripper', 'stroke', 'gauge setting', 'first piece', 'run'],
      'deburr and mark',
    ]);
  });

  it('has steps for a part that is OK so far where every place is given, and something to mind', () => {
    const open = { ...plate, Hole: '13/16', Holes: 1, Bolt: '3/4', Edge: '1-3/16', End: 6 };
    const { verdict, steps } = stepsOf(open);
    expect(verdict).toBe('OK so far');
    expect(steps).toMatchObject({ is: 'steps', mind: 'open' });
  });

  it('has none where a hole or a notch has no given place', () => {
    expect(stepsOf({ ...plate, ...holes, End: null }).steps).toMatchObject({ groups: [0], columns: [] });
    const open = { ...plate, Hole: '13/16', Holes: 1, Bolt: '3/4', Edge: '1-3/16', End: 6 };
    const notched = { ...open, 'Notch width': 1, 'Notch depth': '1/2', Notches: 1 };
    expect(stepsOf(notched).steps).toMatchObject({ groups: [], columns: ['Notch at'] });
  });

  it('says where a notch has no given place, and nothing hangs on it', () => {
    const { verdict, steps } = stepsOf({ ...plate, 'Notch width': 4, 'Notch depth': 1, Notches: 1 });
    expect(verdict).toBe('OK');
    const marked = steps.is === 'steps' ? steps.steps.find(({ action }) => action === 'mark out') : undefined;
    expect(marked?.notes).toContainEqual({ is: 'cut at', isAngle: false });
  });

  it('sends what is not on a press on its way', () => {
    expect(actionsOf({ Qty: 1, Section: 'C8X11.5', Length: 60 })).toEqual(['elsewhere', 'deburr and mark']);
  });

  it('says that the loss of an angle shear is not known, and sets no gauge by it', () => {
    const angle = { Qty: 1, Section: 'L3X3X1/4', Length: 30 };
    const gaugeOf = (press: PressCells) => {
      const { steps } = stepsOf(angle, { 'Back gauge reach': 40, ...press });
      return steps.is === 'steps' ? steps.steps.find(({ action }) => action === 'back gauge') : undefined;
    };
    expect(gaugeOf({})).toMatchObject({ mode: 'pedal', notes: [{ is: 'slug not known' }] });
    expect(gaugeOf({})?.stopMm).toBeUndefined();
    expect(gaugeOf({ 'Angle shear slug': 'none' })).toMatchObject({ mode: 'back gauge', stopMm: 762 });
    expect(gaugeOf({ 'Angle shear slug': '1/2' })?.stopMm).toBeCloseTo(762 + 12.7, 9);
  });
});
