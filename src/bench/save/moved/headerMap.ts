import type { Origins } from '../../open/headerOrigins.js';

/** Where the rows, or the columns, of a sheet of the file are now. */
export class HeaderMap {
  private readonly places: (number | undefined)[] = [];
  /** Some of them are elsewhere or gone. */
  readonly moved: boolean;
  /** How far those beyond the grid's edge moved. */
  private readonly beyond: number;

  /**
   * @param origins for each there is now, the one it was; undefined where nothing moved
   * @param count how many the grid had when it was opened
   * @param greatest how many a sheet can have
   */
  constructor(
    private readonly origins: Origins | undefined,
    private readonly count: number,
    private readonly greatest: number,
  ) {
    origins?.forEach((origin, place) => {
      if (origin !== null) this.places[origin] = place;
    });
    const last = this.places.length - 1;
    this.beyond = origins && last >= 0 ? (this.places[last] ?? 0) - last : 0;
    this.moved =
      origins !== undefined &&
      Array.from({ length: count }, (_, at) => at).some((at) => this.places[at] !== at);
  }

  /** Undefined where it is gone. */
  place(at: number): number | undefined {
    if (!this.origins) return at;
    return at < this.count ? this.places[at] : this.farPlace(at);
  }

  /** The one in the file; undefined for one that is new. */
  origin(place: number): number | undefined {
    return this.origins ? (this.origins[place] ?? undefined) : place;
  }

  /** What is left of several beside each other. */
  span(first: number, last: number): { first: number; last: number } | undefined {
    if (!this.moved) return { first, last };
    let from = first;
    while (from <= last && from < this.count && this.place(from) === undefined) from++;
    let to = last;
    while (to >= from && to < this.count && this.place(to) === undefined) to--;
    if (from > to) return undefined;
    const [start, end] = [this.place(from), this.place(to)];
    return start === undefined || end === undefined ? undefined : { first: start, last: end };
  }

  private farPlace(at: number): number {
    return at === this.greatest - 1 ? at : Math.min(at + this.beyond, this.greatest - 1);
  }
}
