import { roundingShare } from '../press/limit.js';
import { percentDigits } from '../quantity/percentText.js';

const mostDecimals = 6;

/** A share in percent, with as many decimals as tell it from the limits it is not equal to: `80.3%` beside 80%. */
export function percentBeside(use: number, limits: readonly number[]): string {
  const apart = limits.filter((limit) => Math.abs(use - limit) > limit * roundingShare);
  let decimals = 0;
  const isTold = () =>
    apart.every((limit) => percentDigits(use, decimals) !== percentDigits(limit, decimals));
  while (decimals < mostDecimals && !isTold()) decimals += 1;
  return `${percentDigits(use, decimals)}%`;
}

/** A share that somebody wrote, in percent: `80%`. */
export function percent(share: number): string {
  return `${Number(percentDigits(share, 1))}%`;
}
