// npm run icons: renders the icons of the manifest from their drawings into manifest/icons.
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ensurePackages, root } from './ensure.mjs';

ensurePackages({ development: true });
const { renderIcons } = await import('./manifest/icons.mjs');
const folder = path.join(root, 'manifest', 'icons');
mkdirSync(folder, { recursive: true });
for (const [name, bytes] of Object.entries(await renderIcons())) {
  writeFileSync(path.join(folder, name), bytes);
  console.log(`Wrote manifest/icons/${name} (${bytes.length} bytes)`);
}
