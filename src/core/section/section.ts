import type { BeamSection } from './beam/beamSection.js';

/**
 * A section the library can check. Round and square are solid bars; `designation` is the tidy trade name. No press
 * station cuts channels.
 */
export type Section = FlatSection | AngleSection | ChannelSection | RoundSection | SquareSection;

/** Sections no press works: they are sawn, and have area, mass, paint and dimensions only. */
export type SawnSection = TubeSection | RoundTubeSection | TeeSection | BeamSection;

export type AnySection = Section | SawnSection;

export interface FlatSection {
  kind: 'flat';
  designation: string;
  /** Bars have rolled long edges, plates sheared ones. */
  form: 'plate' | 'bar';
  thicknessMm: number;
  widthMm: number;
}

export interface AngleSection {
  kind: 'angle';
  designation: string;
  /** The longer leg. */
  legAMm: number;
  legBMm: number;
  thicknessMm: number;
  rootRadiusMm: number;
  /** False where the size is in no table: the radius is then taken as 0. */
  rootRadiusKnown: boolean;
}

export interface ChannelSection {
  kind: 'channel';
  designation: string;
  name: string;
  depthMm: number;
  flangeWidthMm: number;
  webThicknessMm: number;
  flangeThicknessMm: number;
  areaMm2: number;
  /** Of steel. */
  massKgPerM: number;
  /** How much the flange gains toward the web: 1/6 for US channels, 0.08 for UPN to 300, 0.05 over, 0 for UPE. */
  flangeSlope: number;
  /** Where the flange has its nominal thickness, from the back of the web. */
  flangeNominalAtMm: number;
}

export interface RoundSection {
  kind: 'round';
  designation: string;
  diameterMm: number;
}

export interface SquareSection {
  kind: 'square';
  designation: string;
  sideMm: number;
}

/** A square or rectangular tube. */
export interface TubeSection {
  kind: 'tube';
  designation: string;
  /** The longer side. */
  depthMm: number;
  widthMm: number;
  /** Nominal thickness of the wall. */
  thicknessMm: number;
}

/** A round tube or a pipe by its outside diameter and wall. */
export interface RoundTubeSection {
  kind: 'round tube';
  designation: string;
  diameterMm: number;
  thicknessMm: number;
}

/** A rolled tee of one thickness. */
export interface TeeSection {
  kind: 'tee';
  designation: string;
  flangeWidthMm: number;
  /** Of the stem, with the flange. */
  depthMm: number;
  thicknessMm: number;
}

/** What a section text says: the section, and the length where one trails (`PL1/2X6X1'-0`). */
export interface SectionText<Kind extends AnySection = Section> {
  section: Kind;
  lengthMm?: number;
  /** The shorter leg of an angle is written first. */
  shortLegFirst?: true;
  /** Marks of the text that change nothing: `LLV`, `HR`. */
  ignored?: string[];
}

const sawnKinds: ReadonlySet<AnySection['kind']> = new Set(['tube', 'round tube', 'tee', 'beam']);

/** True for what is sawn because no press works it: tubes, tees and beams. */
export function isSawn(section: AnySection): section is SawnSection {
  return sawnKinds.has(section.kind);
}
