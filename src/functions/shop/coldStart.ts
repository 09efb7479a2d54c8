import { readShop, type ShopTables } from '../../core/shop/readShop.js';
import type { ShopRegistry } from './registry.js';
import { type Attempt, isEditing, retried } from './retry.js';

/** Reads the shop's tables from the workbook: the one reading a function may cause. */
export type ReadShopTables = () => Promise<ShopTables>;
/** Asks the host to calculate every formula once more. Never rejects. */
export type Recalculate = () => Promise<void>;

export interface Patience {
  /** How long calls wait for the reading, in milliseconds. */
  wait: number;
  /** How long its outcome answers further calls. */
  remember: number;
  /** How long a reading that the host refuses while a cell is edited is tried again. */
  editing: number;
  /** How long calls without their shop are gathered before the host is asked to calculate again. */
  gather: number;
}

const usual: Patience = { wait: 60_000, remember: 1000, editing: 600_000, gather: 1500 };

/**
 * Waits for a shop this runtime has not seen: one shared reading of the workbook for all calls, however
 * many wait. Always settles: with the shop registered, or not, after the reading or after `wait`. Calls that ended
 * without their shop are calculated again, once, when the workbook's shop has been read.
 */
export class ColdStart {
  private reading: Promise<void> | undefined;
  /** When the outcome of the last reading no longer answers, in milliseconds of the clock. */
  private staleAt = Number.POSITIVE_INFINITY;
  private hasRead = false;
  private readonly missed = new Set<string>();
  /** Shops that a calculation was asked for: what it does not mend it would not mend twice. */
  private readonly asked = new Set<string>();
  private gathering: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly shops: ShopRegistry,
    private readonly readTables: ReadShopTables | undefined,
    private readonly recalculate: Recalculate = () => Promise.resolve(),
    private readonly patience: Patience = usual,
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
    let timer: ReturnType<typeof setTimeout> | undefined;
    const limit = new Promise<void>((resolve) => (timer = setTimeout(resolve, this.patience.wait)));
    await Promise.race([this.shops.whenRegistered(hash), this.reading, limit]);
    clearTimeout(timer);
    if (!this.shops.find(hash)) this.miss(hash);
  }

  private async start(readTables: ReadShopTables): Promise<void> {
    this.staleAt = Number.POSITIVE_INFINITY;
    await retried(() => this.readAndRegister(readTables), this.patience.editing);
    this.staleAt = Date.now() + this.patience.remember;
    this.healSoon();
  }

  private async readAndRegister(readTables: ReadShopTables): Promise<Attempt> {
    try {
      this.shops.register(readShop(await readTables()));
      this.hasRead = true;
      return 'done';
    } catch (error) {
      // The calls that wait say what to do; why the shop could not be read is kept by StartUp.
      return isEditing(error) ? 'again' : 'done';
    }
  }

  private miss(hash: string): void {
    if (this.asked.has(hash)) return;
    this.missed.add(hash);
    this.healSoon();
  }

  /** Calls end one by one: the host is asked once for all that miss their shop. */
  private healSoon(): void {
    if (!this.hasRead || this.missed.size === 0 || this.gathering !== undefined) return;
    this.gathering = setTimeout(() => {
      this.gathering = undefined;
      for (const hash of this.missed) this.asked.add(hash);
      this.missed.clear();
      void this.recalculate();
    }, this.patience.gather);
  }
}
