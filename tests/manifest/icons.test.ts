import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { renderIcons } from '../../scripts/manifest/icons.mjs';

const rendered = (await renderIcons()) as Record<string, Buffer>;

describe('the icons', () => {
  it('are exactly what their drawings give', () => {
    expect(Object.keys(rendered)).toEqual(['icon-16.png', 'icon-32.png', 'icon-64.png', 'icon-80.png']);
    for (const [name, bytes] of Object.entries(rendered)) {
      const kept = readFileSync(path.join(root, 'manifest/icons', name));
      expect(Buffer.compare(kept, bytes), `${name}: npm run icons`).toBe(0);
    }
  });

  it('come out the same a second time', async () => {
    const again = (await renderIcons()) as Record<string, Buffer>;
    for (const [name, bytes] of Object.entries(rendered)) expect(again[name]?.equals(bytes)).toBe(true);
  });
});
