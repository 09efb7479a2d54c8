import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readShop, type ShopTables } from '../../../src/core/shop/readShop.js';
import { ColdStart } from '../../../src/functions/shop/coldStart.js';
import { ShopRegistry } from '../../../src/functions/shop/registry.js';
import { settingTable, shopTables } from '../../support/sampleShop.js';

const tables = shopTables();
const { hash } = readShop(tables);
const otherTables = shopTables({ settings: settingTable({ 'Shear ratio': 0.8 }) });
const otherHash = readShop(otherTables).hash;
const patience = { wait: 5000, remember: 1000 };
const never = () => new Promise<ShopTables>(() => undefined);

let shops: ShopRegistry;

function coldStart(read: (() => Promise<ShopTables>) | undefined) {
  const reading = vi.fn(read);
  return { cold: new ColdStart(shops, read ? reading : undefined, patience), reading };
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
