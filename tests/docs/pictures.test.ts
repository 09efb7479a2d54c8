import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { gaugePicture } from '../../scripts/pictures/gauges.js';
import { headingPicture } from '../../scripts/pictures/headings.js';

describe('the picture of Edge, End, Pitch, Gage and Leg', () => {
  it('is what npm run pictures draws, and names each', () => {
    const drawn = headingPicture();
    expect(readFileSync(path.join(root, 'docs/pictures/headings.svg'), 'utf8')).toBe(drawn);
    const named = [...drawn.matchAll(/font-weight="700">([^<]*)</g)].map(([, name]) => name);
    for (const name of ['Edge', 'End', 'Pitch', 'Gage', 'Leg']) expect(named).toContain(name);
  });
});

describe('the picture of gauge settings', () => {
  it('is what npm run pictures draws', () => {
    expect(readFileSync(path.join(root, 'docs/pictures/gauges.svg'), 'utf8')).toBe(gaugePicture());
  });

  it('shows four, two and one settings of a base plate', () => {
    expect(gaugePicture()).toContain('As it lies: 4; Turned end for end: 2; Turned and flipped: 1.');
    expect(gaugePicture().match(/>[1-4]: stop /g)).toHaveLength(7);
  });
});
