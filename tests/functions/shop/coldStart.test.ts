// @vitest-environment node
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readShop, type ShopTables } from '../../../src/core/shop/readShop.js';
import { ColdStart } from '../../../src/functions/shop/coldStart.js';
import { ShopRegistry } from '../../../src/functions/shop/registry.js';
import { settingTable, shopTables } from '../../support/sampleShop.js';

const tables = shopTables();
const { hash } = readShop(tables);
const otherTables = shopTables({ settings: settingTable({ 'Shear ratio': 0.8 }) });
const otherHash = readShop(otherTables).hash;
const patience = { wait: 60_000, remember: 1000, editing: 600_000, gather: 1500 };
const never = () => new Promise<ShopTables>(() => undefined);

let shops: ShopRegistry;

function coldStart(read: (() => Promise<ShopTables>) | undefined) {
  const reading = vi.fn(read);
  const recalculate = vi.fn(() => Promise.resolve());
  return {
    cold: new ColdStart(shops, read ? reading : undefined, recalculate, patience),
    reading,
    recalculate,
  };
}

/** Whether a promise has settled, and how many milliseconds of the clock that takes. */
async function settlesWithin(promise: Promise<void>, milliseconds: number): Promise<boolean> {
  let settled = false;
  void promise.then(() => (settled = true));
  await vi.advanceTimersByTimeAsync(milliseconds);
  return settled;
}

beforeEach(() => {
  vi.useFakeTimers();
  shops = new ShopRegistry();
});
afterEach(() => vi.useRealTimers());

describe('ColdStart', () => {
  it('settles at once where there is nothing to read', async () => {
    expect(await settlesWithin(coldStart(undefined).cold.await(hash), 0)).toBe(true);
  });

  it('does not read for a shop that is known', async () => {
    shops.register(readShop(tables));
    const { cold, reading } = coldStart(() => Promise.resolve(otherTables));
    await cold.await(hash);
    expect(reading).not.toHaveBeenCalled();
  });

  it('registers the shop it reads, once for all that wait', async () => {
    const { cold, reading } = coldStart(() => Promise.resolve(tables));
    await Promise.all(Array.from({ length: 500 }, () => cold.await(hash)));
    expect(shops.find(hash)?.presses).toHaveLength(2);
    expect(reading).toHaveBeenCalledTimes(1);
  });

  it.each<[string, () => Promise<ShopTables>]>([
    ['cannot be read', () => Promise.reject(new Error('no workbook'))],
    ['holds another shop', () => Promise.resolve(otherTables)],
    ['holds tables that are no shop', () => Promise.resolve({ presses: [['a', 'b']] })],
  ])('settles when the workbook %s', async (_, read) => {
    const { cold } = coldStart(read);
    expect(await settlesWithin(cold.await(hash), 0)).toBe(true);
    expect(shops.find(hash)).toBeUndefined();
  });

  it('waits no longer than its limit for a workbook that never answers', async () => {
    const { cold } = coldStart(never);
    const waiting = cold.await(hash);
    expect(await settlesWithin(waiting, patience.wait - 1)).toBe(false);
    expect(await settlesWithin(waiting, 1)).toBe(true);
  });

  it('settles as soon as the shop is registered by its own cell', async () => {
    const { cold } = coldStart(never);
    const waiting = cold.await(hash);
    expect(await settlesWithin(waiting, 100)).toBe(false);
    shops.register(readShop(otherTables));
    expect(await settlesWithin(waiting, 0)).toBe(false);
    shops.register(readShop(tables));
    expect(await settlesWithin(waiting, 0)).toBe(true);
  });

  it('answers further calls from the same reading for a while, then reads again', async () => {
    const { cold, reading } = coldStart(() => Promise.resolve(otherTables));
    await cold.await(hash);
    await vi.advanceTimersByTimeAsync(patience.remember - 1);
    await cold.await(hash);
    expect(reading).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(1);
    await cold.await(hash);
    expect(reading).toHaveBeenCalledTimes(2);
    expect(shops.find(otherHash)).toBeDefined();
  });

  it('leaves no timer behind once it has read', async () => {
    const { cold } = coldStart(() => Promise.resolve(tables));
    await cold.await(hash);
    await vi.advanceTimersByTimeAsync(0);
    expect(vi.getTimerCount()).toBe(0);
  });
});

const editing = () =>
  Promise.reject<ShopTables>(Object.assign(new Error('edit'), { code: 'InvalidOperationInCellEditMode' }));

describe('a host that refuses while a cell is edited', () => {
  it('is asked again until the cell is left, and the calls that wait get their shop', async () => {
    let isEdited = true;
    const { cold, recalculate } = coldStart(() => (isEdited ? editing() : Promise.resolve(tables)));
    const waiting = cold.await(hash);
    expect(await settlesWithin(waiting, 30_000)).toBe(false);
    isEdited = false;
    expect(await settlesWithin(waiting, 2000)).toBe(true);
    expect(shops.find(hash)).toBeDefined();
    await vi.advanceTimersByTimeAsync(5000);
    expect(recalculate).not.toHaveBeenCalled();
  });

  it('leaves no call waiting longer than a minute, and is asked to calculate again, once, when the shop is read', async () => {
    let isEdited = true;
    const { cold, recalculate } = coldStart(() => (isEdited ? editing() : Promise.resolve(tables)));
    const waiting = Promise.all(Array.from({ length: 50 }, () => cold.await(hash))).then(() => undefined);
    expect(await settlesWithin(waiting, patience.wait)).toBe(true);
    expect(shops.find(hash)).toBeUndefined();
    isEdited = false;
    await vi.advanceTimersByTimeAsync(4000);
    expect(shops.find(hash)).toBeDefined();
    expect(recalculate).toHaveBeenCalledTimes(1);
  });

  it('is given up after ten minutes, without a timer left', async () => {
    const { cold, recalculate } = coldStart(editing);
    const waiting = cold.await(hash);
    await vi.advanceTimersByTimeAsync(700_000);
    await waiting;
    expect(vi.getTimerCount()).toBe(0);
    expect(recalculate).not.toHaveBeenCalled();
  });
});

describe('calls that ended without their shop', () => {
  it('are calculated again once where the workbook holds another shop, and not for the same stamp a second time', async () => {
    const { cold, recalculate } = coldStart(() => Promise.resolve(otherTables));
    await Promise.all([cold.await(hash), cold.await(hash)]);
    await vi.advanceTimersByTimeAsync(patience.gather);
    expect(recalculate).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(10_000);
    await cold.await(hash);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(recalculate).toHaveBeenCalledTimes(1);
  });

  it('are left where the workbook has no shop that could be read', async () => {
    const { cold, recalculate } = coldStart(() => Promise.reject(new Error('no workbook')));
    await cold.await(hash);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(recalculate).not.toHaveBeenCalled();
  });
});

describe('ShopRegistry', () => {
  it('holds several shops, each by its hash', () => {
    shops.register(readShop(tables));
    shops.register(readShop(otherTables));
    expect([shops.find(hash)?.hash, shops.find(otherHash)?.hash]).toEqual([hash, otherHash]);
    expect(shops.find('AAAA-AAAA-AAAA')).toBeUndefined();
  });

  it('gives all that wait for one shop the same promise, and one that is settled once it is known', async () => {
    const waiting = shops.whenRegistered(hash);
    expect(shops.whenRegistered(hash)).toBe(waiting);
    expect(shops.whenRegistered(otherHash)).not.toBe(waiting);
    shops.register(readShop(tables));
    await expect(waiting).resolves.toBeUndefined();
    await expect(shops.whenRegistered(hash)).resolves.toBeUndefined();
  });
});
