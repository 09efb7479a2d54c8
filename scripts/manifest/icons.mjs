// The icons of the manifest: drawn as SVG in manifest/drawing, one drawing for the smallest size.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { root } from '../ensure.mjs';

const drawings = path.join(root, 'manifest', 'drawing');
/** The ribbon's sizes, and 64 for the list of add-ins on fine screens. */
const sizes = [16, 32, 64, 80];

let ready;

/** The PNG files by name, the same bytes for the same drawings on every machine. */
export async function renderIcons() {
  ready ??= initWasm(readFileSync(createRequire(import.meta.url).resolve('@resvg/resvg-wasm/index_bg.wasm')));
  await ready;
  return Object.fromEntries(sizes.map((size) => [`icon-${size}.png`, png(size)]));
}

function png(size) {
  const drawing = path.join(drawings, size === 16 ? 'icon-16.svg' : 'icon.svg');
  const image = new Resvg(readFileSync(drawing, 'utf8'), { fitTo: { mode: 'width', value: size } });
  return Buffer.from(image.render().asPng());
}
