/** The day as it stands on what is printed. */
export function today(): string {
  return new Date().toLocaleDateString('en', { year: 'numeric', month: 'long', day: 'numeric' });
}
