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
  /** When the outcome of the last reading no longer answers, in milliseconds of the clock. */
  private staleAt = Number.POSITIVE_INFINITY;

  constructor(
    private readonly shops: ShopRegistry,
    private readonly readTables: ReadShopTables | undefined,
    private readonly patience: Patience = { wait: 5000, remember: 1000 },
  ) {}

  /**
   * Reads when the add-in starts, before any call asks. Calls that come meanwhile wait for the same reading;
   * one that comes later for a shop it did not find reads anew.
   */
  async begin(): Promise<void> {
    if (!this.readTables || this.reading) return;
    const reading = this.start(this.readTables);
    this.reading = reading;
    await reading;
    if (this.reading === reading) this.reading = undefined;
  }

  /** Settles when the shop of this hash is registered, or will not be. Never rejects. */
  async await(hash: string): Promise<void> {
    if (!this.readTables || this.shops.find(hash)) return;
    if (Date.now() >= this.staleAt) this.reading = undefined;
    this.reading ??= this.start(this.readTables);
    await Promise.race([this.shops.whenRegistered(hash), this.reading]);
  }

  private async start(readTables: ReadShopTables): Promise<void> {
    this.staleAt = Number.POSITIVE_INFINITY;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const limit = new Promise<void>((resolve) => (timer = setTimeout(resolve, this.patience.wait)));
    await Promise.race([this.readAndRegister(readTables), limit]);
    clearTimeout(timer);
    this.staleAt = Date.now() + this.patience.remember;
  }

  private async readAndRegister(readTables: ReadShopTables): Promise<void> {
    try {
      this.shops.register(readShop(await readTables()));
    } catch {
      // The calls that wait say what to do; why the shop could not be read is kept by StartUp.
    }
  }
}
