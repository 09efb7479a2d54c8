import { expect, it } from 'vitest';
import { isOfStation } from '../../../../src/core/press/item/isOfStation.js';

it.each([
  ['Punch throat', 'Punch', true],
  ['Bar shear round', 'Bar shear', true],
  ['Punch', 'Punch', false],
  ['Flat shear rake', 'Bar shear', false],
])('%s of %s: %s', (item, station, isOf) => {
  expect(isOfStation(item, station)).toBe(isOf);
});
