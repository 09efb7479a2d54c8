/** Cells hold 15 digits; what differs behind the twelfth is rounding of units. */
const digits = 12;

/**
 * A share in percent, rounded as a cell in the sheet shows it: halves away from zero.
 * @param share the share, 1 for all of it
 * @param decimals digits behind the point
 * @returns the digits, without a sign: `68`
 * @example percentDigits(0.67499999999999993) // '68', as the cell that holds 0.675 shows
 * Source: common practice, no source.
 */
export function percentDigits(share: number, decimals = 0): string {
  const scale = 10 ** decimals;
  const scaled = Number((share * 100 * scale).toPrecision(digits));
  return (Math.sign(scaled) * (Math.round(Math.abs(scaled)) / scale)).toFixed(decimals);
}

/**
 * A share as text, the same in the pane, the report and the commands as in its cell.
 * @param share the share, 1 for all of it
 * @returns a whole percentage: `68%`; `under 1%` for what would round to none
 * @example percentText(0.675) // '68%'
 * Source: common practice, no source.
 */
export function percentText(share: number): string {
  const text = percentDigits(share);
  return share > 0 && text === '0' ? 'under 1%' : `${text}%`;
}
