/** A coordinate with no more digits than a screen shows. */
const short = (value: number) => String(Math.round(value * 100) / 100);

export function polyline(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('');
}

export function polygon(points: readonly (readonly [number, number])[]): string {
  return points.length === 0 ? '' : `${polyline(points)}Z`;
}

export function segment(x1: number, y1: number, x2: number, y2: number): string {
  return `M${short(x1)} ${short(y1)}L${short(x2)} ${short(y2)}`;
}

export function rectangle(x: number, y: number, width: number, height: number): string {
  return `M${short(x)} ${short(y)}h${short(width)}v${short(height)}h${short(-width)}Z`;
}

export function diamond(x: number, y: number, half: number): string {
  return polygon([
    [x, y - half],
    [x + half, y],
    [x, y + half],
    [x - half, y],
  ]);
}

/** An ellipse around a center; a circle where both radii are equal. */
export function ellipse(x: number, y: number, radiusX: number, radiusY = radiusX): string {
  const arc = `a${short(radiusX)} ${short(radiusY)} 0 1 0`;
  return `M${short(x - radiusX)} ${short(y)}${arc} ${short(2 * radiusX)} 0${arc} ${short(-2 * radiusX)} 0Z`;
}

/** Two straight sides beside a middle line, and half a circle around each of its ends. */
export function stadium([x1, y1]: [number, number], [x2, y2]: [number, number], radius: number): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [sideX, sideY] = [(-(y2 - y1) / length) * radius, ((x2 - x1) / length) * radius];
  const at = (x: number, y: number) => `${short(x)} ${short(y)}`;
  const round = `A${short(radius)} ${short(radius)} 0 0 0 `;
  return (
    `M${at(x1 + sideX, y1 + sideY)}L${at(x2 + sideX, y2 + sideY)}` +
    `${round}${at(x2 - sideX, y2 - sideY)}L${at(x1 - sideX, y1 - sideY)}${round}${at(x1 + sideX, y1 + sideY)}Z`
  );
}
