import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import type { PartEnd, PartPlace, PartSide } from '../job/rowJob.js';
import { longestCell } from './cellWords.js';
import { faceProblem, sidesOf } from './faces.js';
import { listItems } from './listItems.js';
import { type PlaceNoun, placeWords, type PlaceWords } from './placeWords.js';

/** The work whose place is read. */
export type PlacedWork = 'notch' | 'clip' | 'bend';

export interface PlaceContext {
  work: PlacedWork;
  argument: string;
  section: AnySection | undefined;
  unit: LengthUnit;
  length: (text: string) => number;
  /** How many places the row's count asks for, where it has one. */
  count: number | undefined;
}

const allEnds: readonly PartEnd[] = ['left', 'right'];

/**
 * Reads where work stands: corners (`bottom left`, `all corners`), ends (`left end`, in its middle, `left end 2`), edges
 * (`bottom edge 6`), several with commas or semicolons, the leg or face among the words (`long leg heel left`). A bend is
 * told by the end or edge it is parallel to and its distance from it. Throws `invalid` for what is no place of the work
 * or the section, and for a place that stands twice. Source: common practice, no source.
 */
export function readPlaces(text: string, context: PlaceContext): PartPlace[] {
  const { argument, count } = context;
  const reader = new PlaceReader(text, context);
  if (text.length > longestCell) return reader.notAPlace(text);
  const { items, parted } = listItems(text);
  if (parted && (count === undefined || parted.length === count)) {
    const [first = '', second = ''] = parted;
    const problem = `${quoted(text)} may be one place or two.`;
    return refuse(argument, text, problem, `Write a point for the comma, or ${first}; ${second}.`);
  }
  const places = items.flatMap((item) => reader.read(item));
  if (places.length === 0) reader.notAPlace(text);
  const keys = places.map((place) => JSON.stringify(Object.entries(place).sort()));
  const twice = keys.findIndex((key, at) => keys.indexOf(key) !== at);
  if (twice >= 0)
    return refuse(argument, text, `${quoted(text)} names a place twice.`, 'Name each place once.');
  return places;
}

class PlaceReader {
  private before: PlaceWords | undefined;

  constructor(
    private readonly text: string,
    private readonly context: PlaceContext,
  ) {}

  /** The places of one item. A size alone (`bottom edge 6, 18`) is at the edge or end named before it. */
  read(item: string): PartPlace[] {
    const words = placeWords(this.everyCorner(item), this.context.argument, this.text, this.allowed());
    const alone =
      words.size !== undefined && words.ends.length + words.sides.length + words.nouns.length === 0;
    const before = this.before?.size === undefined || words.leg !== undefined ? undefined : this.before;
    const place = alone && before ? { ...before, size: words.size ?? '' } : words;
    if (place === words && this.isUnclear(words, item)) return this.notAPlace(item);
    this.before = place;
    const { leg } = place;
    const problem = leg === undefined ? undefined : faceProblem(this.context.section, leg, this.context.unit);
    if (problem) refuse(this.context.argument, this.text, problem.problem, problem.allowed);
    for (const side of place.sides) this.requireSide(side, leg);
    const on = leg === undefined ? {} : { leg };
    return this.placesOf(place, item).map((each) => ({ ...each, ...on }));
  }

  /** Corners are all that is clipped, so that `all` alone says all of them. */
  private everyCorner(item: string): string {
    return this.context.work === 'clip' && /^all(?: (?:4|four))?$/i.test(item) ? 'all corners' : item;
  }

  private requireSide(side: PartSide, leg: string | undefined): void {
    const { section, argument } = this.context;
    const sides = sidesOf(section, leg);
    if (!sides || sides.includes(side)) return;
    const face = section?.kind === 'channel' && leg !== undefined ? `the ${leg}` : section?.designation;
    refuse(argument, this.text, `${face} has no ${side}.`, `Its edges are ${sides.join(' and ')}.`);
  }

  private placesOf(place: PlaceWords, item: string): PartPlace[] {
    const { work } = this.context;
    const [noun, ...otherNouns] = [...new Set(place.nouns)];
    if (place.from !== undefined && (place.size === undefined || otherNouns.length > 0)) {
      return this.notAPlace(item);
    }
    if (place.ends.length > 1 || place.sides.length > 1) return this.notAPlace(item);
    if (work === 'bend')
      return otherNouns.length > 0 ? this.notAPlace(item) : this.alongLine(place, noun, item);
    const isCorner = otherNouns.length > 0 || noun === undefined || noun === 'corner';
    const byEndAndEdge = otherNouns.length > 0 && !place.nouns.includes('corner');
    if (isCorner && (noun !== undefined || place.size === undefined)) {
      return this.corners(byEndAndEdge ? { ...place, plural: false } : place, item);
    }
    if (work === 'clip') return this.notAPlace(item);
    return this.alongLine(place, noun, item);
  }

  private corners(place: PlaceWords, item: string): PartPlace[] {
    const { leg, plural, every, size } = place;
    const [end] = place.ends;
    const [side] = place.sides;
    const sides = side ? [side] : (this.bothSides(leg) ?? []);
    const ends = end ? [end] : allEnds;
    const corners = ends.flatMap((each) =>
      sides.map((of) => ({ at: 'corner' as const, end: each, side: of })),
    );
    const counted = size === undefined || size === String(corners.length);
    const one =
      end !== undefined && side !== undefined && !plural && every === undefined && size === undefined;
    const several = plural && (end !== undefined) !== (side !== undefined);
    const all = !end && !side && (plural ? every === 'all' || size === '4' : every === 'each');
    if (corners.length === 0 || !counted || !(one || several || all)) return this.notAPlace(item);
    return corners;
  }

  /**
   * `6 from left end` and `left 6` say how far along a part a notch is, not in which edge; `2 both ends` may be two of
   * them or the distance.
   */
  private isUnclear({ ends, sides, nouns, size, plural, from }: PlaceWords, item: string): boolean {
    if (this.context.work === 'bend') return false;
    if (from === undefined && /\bfrom\b/i.test(item)) return true;
    if (size === undefined || (plural && nouns.includes('corner'))) return false;
    const saysAlong = nouns.length === 0 && ends.length > 0 && sides.length === 0;
    return saysAlong || (/^\W*\d/.test(item) && !/\bleg\b/i.test(item));
  }

  /** At an end or an edge, with its distance where there is one. */
  private alongLine(place: PlaceWords, noun: PlaceNoun | undefined, item: string): PartPlace[] {
    const [end] = place.ends;
    const [side] = place.sides;
    const from = place.size === undefined ? {} : { fromMm: this.context.length(place.size) };
    if (noun === undefined && (place.size === undefined || (end && side))) return this.notAPlace(item);
    const atEnd = noun === 'end' || (noun === undefined && end !== undefined);
    const reference = place.from ?? (atEnd ? side : end);
    const named = atEnd ? end : side;
    // Without a distance there is nothing to take from it: a corner may be meant.
    if (reference !== undefined && place.size === undefined) return this.notAPlace(item);
    this.requireReference(reference, atEnd, item);
    if (named === undefined) return this.both(place, atEnd, from) ?? this.notAPlace(item);
    if (place.every !== undefined || place.plural) return this.notAPlace(item);
    return [
      atEnd ? { at: 'end', end: end ?? 'left', ...from } : { at: 'edge', side: side ?? 'bottom', ...from },
    ];
  }

  /** A distance along an edge is from the left end, one along an end from the bottom edge or the heel. */
  private requireReference(reference: PartEnd | PartSide | undefined, atEnd: boolean, item: string): void {
    if (reference === undefined) return;
    const { argument, work } = this.context;
    if (work === 'bend') this.notAPlace(item);
    if (atEnd ? reference === 'bottom' || reference === 'heel' : reference === 'left') return;
    const from = atEnd ? 'the bottom edge or the heel' : 'the left end';
    refuse(argument, this.text, `${quoted(item)} is not from ${from}.`, `Give the distance from ${from}.`);
  }

  private both(place: PlaceWords, atEnd: boolean, from: { fromMm?: number }): PartPlace[] | undefined {
    if (place.every === undefined || place.every === 'all') return undefined;
    if (atEnd) return allEnds.map((end) => ({ at: 'end', end, ...from }));
    if (place.every !== 'both') return undefined;
    return this.bothSides(place.leg)?.map((side) => ({ at: 'edge', side, ...from }));
  }

  /** The two long edges of the face; undefined where the section has others, too. A plate where it is not known. */
  private bothSides(leg: string | undefined): readonly PartSide[] | undefined {
    const { section } = this.context;
    const sides = sidesOf(section, leg) ?? (section === undefined ? (['bottom', 'top'] as const) : []);
    return sides.length === 2 ? sides : undefined;
  }

  notAPlace(item: string): never {
    return refuse(this.context.argument, this.text, `${quoted(item)} is not ${this.what()}.`, this.allowed());
  }

  private what(): string {
    return { notch: 'the place of a notch', clip: 'a corner', bend: 'the place of a bend' }[
      this.context.work
    ];
  }

  /** How a place is written on this section. */
  private allowed(): string {
    const { work, section } = this.context;
    const [low, high] =
      section?.kind === 'angle'
        ? ['long leg heel', 'long leg toe']
        : section?.kind === 'channel'
          ? ['web bottom', 'web top']
          : ['bottom', 'top'];
    if (work === 'clip') return `Write ${low} left; ${high} right.`;
    if (work === 'bend') return `Write left end 4 or ${low} edge 2.`;
    return `Write a corner (${high} left), an end (left end 2) or an edge (${high} edge 6).`;
  }
}
