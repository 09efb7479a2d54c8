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
  private readonly waiting = new Map<string, (() => void)[]>();

  register(shop: Shop): void {
    if (!this.shops.has(shop.hash)) this.shops.set(shop.hash, shop);
    const callbacks = this.waiting.get(shop.hash) ?? [];
    this.waiting.delete(shop.hash);
    for (const callback of callbacks) callback();
  }

  find(hash: string): Shop | undefined {
    return this.shops.get(hash);
  }

  /** Calls back once when the shop of this hash is registered. */
  whenRegistered(hash: string, callback: () => void): void {
    this.waiting.set(hash, [...(this.waiting.get(hash) ?? []), callback]);
  }
}
