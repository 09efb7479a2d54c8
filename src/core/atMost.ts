/** Unit conversions leave rounding in the last digits; a size at the limit itself is within it. */
const roundingShare = 1e-9;

/** True for a value up to a limit, the limit itself included whatever unit it was typed in. */
export function atMost(value: number, limit: number): boolean {
  return value <= limit * (1 + roundingShare);
}
