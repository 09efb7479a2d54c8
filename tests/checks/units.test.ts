import Qty from 'js-quantities';
import { describe, it } from 'vitest';
import * as units from '../../src/core/quantity/units.js';
import { expectPrinted } from '../support/printed.js';

/** Checked against a second unit library (js-quantities) and against printed digits. */
const weight = (mass: string) => Qty(mass).mul(Qty('1 gee'));
const kilopoundPerSquareInch = weight('1000 lb').div(Qty('1 in').mul(Qty('1 in')));

describe('Unit factors against a second unit library', () => {
  it.each([
    ['inch', units.mmPerInch, Qty('1 in').to('mm').scalar],
    ['foot', units.mmPerFoot, Qty('1 ft').to('mm').scalar],
    ['pound', units.kilogramPerPound, Qty('1 lb').to('kg').scalar],
    ['US ton of force', units.newtonPerUsTon, weight('2000 lb').to('N').scalar],
    ['tonne-force', units.newtonPerTonneForce, weight('1000 kg').to('N').scalar],
    ['kilonewton', units.newtonPerKilonewton, Qty('1 kN').to('N').scalar],
    ['ksi', units.megapascalPerKsi, kilopoundPerSquareInch.to('MPa').scalar],
    ['degree', units.radianPerDegree, Qty('1 deg').to('rad').scalar],
  ])('%s', (_name, factor, referee) => {
    expectPrinted(factor / referee, '1.000000000');
  });
});

describe('Unit factors against NIST SP 811, Appendix B (from memory)', () => {
  it.each([
    ['inch', units.mmPerInch, '25.4'],
    ['foot', units.mmPerFoot, '304.8'],
    ['US ton of force, 2000 lbf, in kN', units.newtonPerUsTon / 1000, '8.896443'],
    ['tonne-force in kN', units.newtonPerTonneForce / 1000, '9.80665'],
    ['ksi in MPa', units.megapascalPerKsi, '6.894757'],
    ['pound', units.kilogramPerPound, '0.45359237'],
    ['degree in rad', units.radianPerDegree, '0.01745329'],
  ])('%s', (_name, factor, digits) => {
    expectPrinted(factor, digits);
  });
});
