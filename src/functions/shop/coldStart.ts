import { readShop, type ShopTables } from '../../core/shop/readShop.js';
import type { ShopRegistry } from './registry.js';

/** Reads the shop's tables from the workbook: the one reading a function may cause. */
export type ReadShopTables = () => Promise<ShopTables>;

/** How long calls wait for that reading, and how long its outcome answers further calls, in milliseconds. */
export interface Patience {
  wait: number;
  remember: number;
}

/**
 * Waits for a shop this runtime has not seen: one shared reading of the workbook for all calls, however
 * many wait. Always settles: with the shop registered, or not, after the reading or after `wait`.
 */
export class ColdStart {
  private reading: Promise<void> | undefined;

  constructor(
    private readonly shops: ShopRegistry,
    private readonly readTables: ReadShopTables | undefined,
    private readonly patience: Patience = { wait: 5000, remember: 1000 },
  ) {}

  /** Settles when the shop of this hash is registered, or will not be. Never rejects. */
  async await(hash: string): Promise<void> {
    if (!this.readTables || this.shops.find(hash)) return;
    this.reading ??= this.start(this.readTables);
    const registered = new Promise<void>((resolve) => this.shops.whenRegistered(hash, resolve));
    await Promise.race([registered, this.reading]);
  }

  private start(readTables: ReadShopTables): Promise<void> {
    const { wait, remember } = this.patience;
    const outcome = readTables().then(
      (tables) => this.shops.register(readShop(tables)),
      // The calls that wait say what to do; why the workbook could not be read is of no use in their cells.
      () => undefined,
    );
    const reading = Promise.race([outcome, new Promise<void>((resolve) => setTimeout(resolve, wait))]);
    void reading.finally(() => setTimeout(() => (this.reading = undefined), remember));
    return reading;
  }
}
