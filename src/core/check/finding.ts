import type { Failure } from '../inputError.js';
import type { Station } from '../press/item/pressItem.js';
import type { PressFact } from './pressFact.js';
import type { RowFact } from './rowFact.js';
import type { Verdict } from './verdict.js';

/*
 * What a check finds, as data: a rule, how it ended, the word that a row takes from it, and the sizes behind
 * it.
 */

/**
 * How a check ended: the limit is held; it is not; it would be by some of what the row or the press leaves open; or it
 * has nothing to be checked against.
 */
export type Outcome = 'held' | 'failed' | 'open' | 'not applicable';

/** What every finding has. Data only: `core/say` makes the sentences. */
export interface FindingBase {
  outcome: Outcome;
  /** The word a row takes from it; OK for what is held. */
  verdict: Verdict;
  /** The name of the press it is about. */
  press?: string;
  /** The holes of the row it is about, counted from 0. */
  group?: number;
  /** The station that the press lacks, or of which it is not known whether the press has it. */
  station?: Station;
  /** Of a cell of the press that cannot be read: what the press would make of the work is not known. */
  ofPressCell?: true;
}

/** A cell, a setting or a cell of the press that cannot be read, or that another contradicts. */
export interface RefusalFact {
  rule: 'refusal';
  failure: Failure;
  /** The heading, the holes or the press it is about. */
  about: string;
}

export type Finding = FindingBase & (RefusalFact | PressFact | RowFact);

/** What a check against a press finds. */
export type PressFinding = FindingBase & (RefusalFact | PressFact);

export type Rule = Finding['rule'];

/** The findings of one rule. */
export type FindingOf<R extends Rule> = Extract<Finding, { rule: R }>;

/** Findings that carry a share of a rating. */
export type ShareFinding = FindingOf<'share'>;

/** A cell that cannot be read. */
export function refusal(
  failure: Failure,
  about: string,
  more: Partial<FindingBase> = {},
): FindingOf<'refusal'> {
  return { rule: 'refusal', outcome: 'open', verdict: 'Check input', failure, about, ...more };
}
