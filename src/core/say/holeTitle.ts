/** The holes of a row by their number, counted from 0, as their heading names them: `Hole`, `Hole 2`. */
export function holeTitle(group = 0): string {
  return group === 0 ? 'Hole' : `Hole ${group + 1}`;
}
