// Holes for the referees, made from their sizes alone: the corners of a core, and a radius around it.
import type { Pair } from 'polygon-clipping';
import type { GivenHole } from './randomPart.js';

export interface Grown {
  corners: Pair[];
  radius: number;
}

export function grownHole({ hole, direction, center }: GivenHole): Grown {
  const turn = direction === 'across' ? Math.PI / 2 : 0;
  const around = (corners: Pair[]) => corners.map(([x, y]): Pair => turned(x, y, turn, center));
  switch (hole.shape) {
    case 'round':
      return { corners: [[center.x, center.y]], radius: hole.diameterMm / 2 };
    case 'slot': {
      const half = (hole.lengthMm - hole.widthMm) / 2;
      return {
        corners: around([
          [-half, 0],
          [half, 0],
        ]),
        radius: hole.widthMm / 2,
      };
    }
    case 'hexagon': {
      const radius = hole.acrossFlatsMm / 2 / Math.cos(Math.PI / 6);
      const corner = (at: number): Pair => [
        radius * Math.cos((at * Math.PI) / 3),
        radius * Math.sin((at * Math.PI) / 3),
      ];
      return { corners: around([0, 1, 2, 3, 4, 5].map(corner)), radius: 0 };
    }
    default: {
      const [w, l] = hole.shape === 'square' ? [hole.sideMm, hole.sideMm] : [hole.widthMm, hole.lengthMm];
      return {
        corners: around([
          [-l / 2, -w / 2],
          [l / 2, -w / 2],
          [l / 2, w / 2],
          [-l / 2, w / 2],
        ]),
        radius: 0,
      };
    }
  }
}

function turned(x: number, y: number, angle: number, center: { x: number; y: number }): Pair {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [center.x + x * cos - y * sin, center.y + x * sin + y * cos];
}
