import { refuse } from './inputError.js';

/** Refuses a number that is not above zero or not finite: what every size, strength and force must be. */
export function requirePositive(argument: string, value: number): void {
  if (value > 0 && Number.isFinite(value)) return;
  refuse(
    argument,
    String(value),
    `${value} is not above zero${value === Infinity ? ' and finite' : ''}.`,
    'Give a number above zero.',
  );
}

/** Refuses a number outside `least` to `greatest`, both allowed. */
export function requireWithin(argument: string, value: number, least: number, greatest: number): void {
  if (value >= least && value <= greatest) return;
  refuse(argument, String(value), `${value} is out of range.`, `Allowed: ${least} to ${greatest}.`);
}
