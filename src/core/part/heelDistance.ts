import type { PlacedHole } from './part.js';

/** How far a hole lies from the line y = 0 of its face, in mm, wherever it may lie. */
export interface HeelDistance {
  readonly rim: { readonly least: number; readonly most: number };
  readonly center: { readonly least: number; readonly most: number };
}

/**
 * The distance of a hole from the heel of its leg, or from the back of the web on a flange.
 *
 * Formula: center: y; rim: the least y of the hole.
 * @param hole its shape, center and freedom, mm
 * @returns distances in mm from the line y = 0, below 0 beyond it
 * Valid for any hole. Throws nothing.
 * @example heelDistance(hole).rim.least // what is left between the heel and a hole on the gage
 * Source: plane geometry.
 */
export function heelDistance({ shape, center, free }: PlacedHole): HeelDistance {
  const rim = Math.min(...shape.core.map(({ y }) => y)) - shape.radius;
  const [down, up] = [free?.y0 ?? 0, free?.y1 ?? 0];
  return {
    rim: { least: rim + down, most: rim + up },
    center: { least: center.y + down, most: center.y + up },
  };
}
