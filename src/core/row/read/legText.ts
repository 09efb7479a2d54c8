/** The leg alone: `long` of `long leg` and `the long leg`, `4` of `4 leg` and `leg 4`. */
export function legText(text: string): string {
  return text.replace(/^the /i, '').replace(/ ?\blegs?\b\.? ?/i, '');
}
