import type { QuantityKind } from '../../core/working/working.js';

/** What a function gives: a quantity, converted to the shop's units; text; or cells that spill as they are. */
export type ResultKind = QuantityKind | 'cells';
