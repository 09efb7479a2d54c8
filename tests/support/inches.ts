/** So many parts of an inch as a drawing has them: `3/16`, `1 3/16`, `2`. */
export function inchText(parts: number, denominator: 16 | 64 = 16): string {
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  if (rest === 0) return String(whole);
  return whole === 0 ? `${rest}/${denominator}` : `${whole} ${rest}/${denominator}`;
}
