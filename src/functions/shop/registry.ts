import type { Shop } from '../../core/shop/readShop.js';

/** Thrown inside the wrapper only, for a stamp this runtime has never seen. */
export class ShopNotRegistered extends Error {
  constructor(readonly hash: string) {
    super(`no shop ${hash} in this runtime`);
  }
}

/** The shops this runtime has parsed, by hash. Several workbooks may be open, so several may be held. */
export class ShopRegistry {
  private readonly shops = new Map<string, Shop>();
  private readonly waiting = new Map<string, { promise: Promise<void>; settle: () => void }>();

  register(shop: Shop): void {
    if (!this.shops.has(shop.hash)) this.shops.set(shop.hash, shop);
    this.waiting.get(shop.hash)?.settle();
    this.waiting.delete(shop.hash);
  }

  find(hash: string): Shop | undefined {
    return this.shops.get(hash);
  }

  /** Settles when the shop of this hash is registered: one promise, however many calls wait for it. */
  whenRegistered(hash: string): Promise<void> {
    if (this.shops.has(hash)) return Promise.resolve();
    const known = this.waiting.get(hash);
    if (known) return known.promise;
    let settle = () => {};
    const promise = new Promise<void>((resolve) => (settle = resolve));
    this.waiting.set(hash, { promise, settle });
    return promise;
  }
}
