/** A share as a percentage: `113%`. */
export function shownShare(share: number): string {
  return `${(share * 100).toFixed(share < 0.0995 ? 1 : 0)}%`;
}
