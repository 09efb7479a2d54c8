import type { CauseKind } from '../../part/outline.js';
import type { Measured } from './measured.js';

/** How much more than it must be the distance of a group to an edge can be at the best, by the cause of the edge. */
export class Slack {
  private readonly leastMm = new Map<string, number>();

  add(group: number, cause: CauseKind, { given, limit }: Measured): void {
    const key = `${group} ${cause}`;
    this.leastMm.set(key, Math.min(this.leastMm.get(key) ?? Infinity, given.most - limit.least));
  }

  of(group: number, cause: CauseKind): number | undefined {
    return this.leastMm.get(`${group} ${cause}`);
  }
}
