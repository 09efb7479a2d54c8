import { unzipSync, zipSync } from 'fflate';
import { type LoadedFunctions, recalculateWorkbook, WorkbookRefused } from '../../src/headless/index.js';
import { type FuzzKind, thrown } from './kind.js';
import type { Random } from './random.js';

const numbers = [
  '0',
  '-1',
  '1',
  '1048577',
  '16385',
  '4294967296',
  '1E309',
  '9'.repeat(40),
  'NaN',
  '',
  'A1:XFD1048576',
  'x',
];
const pieces = [
  '<',
  '>',
  '&',
  '"',
  '/>',
  '</c>',
  '<c>',
  '<row>',
  '<f>1+1</f>',
  '<v>',
  ']]>',
  '<!--',
  '<![CDATA[',
  '<!DOCTYPE a>',
  '&#0;',
  '&lol;',
  '\u0000',
  '\ufffe',
  '<?xml?>',
];

/** One change to the text of a part. */
function mutated(random: Random, text: string): string {
  const at = random.below(text.length + 1);
  const to = Math.min(text.length, at + random.below(random.chance(0.8) ? 30 : text.length + 1));
  switch (random.below(8)) {
    case 0:
      return text.slice(0, at) + text.slice(to);
    case 1:
      return text.slice(0, to) + text.slice(at);
    case 2:
      return text.slice(0, at) + random.pick(pieces) + text.slice(at);
    case 3:
      return text.slice(0, at);
    case 4: {
      const values = [...text.matchAll(/="([^"]*)"/g)];
      const { index, 0: whole = '' } = random.pick(
        values.length > 0 ? values : [Object.assign([''], { index: at })],
      );
      return `${text.slice(0, index)}="${random.pick(numbers)}"${text.slice(index + whole.length)}`;
    }
    case 5: {
      const inner = [...text.matchAll(/>([^<]+)</g)];
      const { index, 0: whole = '' } = random.pick(
        inner.length > 0 ? inner : [Object.assign([''], { index: at })],
      );
      return `${text.slice(0, index)}>${random.pick([...numbers, 'A1', 'SUM(A:A)', 'A1#', '@@A1'])}<${text.slice(index + whole.length)}`;
    }
    case 6:
      return text.slice(0, at) + String.fromCodePoint(random.below(0x3000)) + text.slice(at + 1);
    default: {
      const elements = [...text.matchAll(/<[^<>]*>/g)];
      const [one, other] = [random.pick(elements), random.pick(elements)];
      return one && other
        ? text.slice(0, one.index) + other[0] + text.slice(one.index + one[0].length)
        : text;
    }
  }
}

const decoder = new TextDecoder();
const encoder = new TextEncoder();

/** A package with one to three changes: in the text of its parts, in its list of parts, or in its bytes. */
export function mutant(random: Random, bytes: Uint8Array): Uint8Array {
  if (random.chance(0.15)) {
    const copy = bytes.slice(0, random.chance(0.2) ? random.below(bytes.length) : bytes.length);
    for (let count = 1 + random.below(4); count > 0 && copy.length > 0; count--)
      copy[random.below(copy.length)] = random.below(256);
    return copy;
  }
  const parts = unzipSync(bytes);
  for (let count = 1 + random.below(3); count > 0; count--) {
    const names = Object.keys(parts);
    const name = random.pick(names);
    const kind = random.below(12);
    if (kind === 0) delete parts[name];
    else if (kind === 1) parts[random.pick(names)] = parts[name] ?? new Uint8Array();
    else if (kind === 2)
      parts[random.pick([name.toUpperCase(), `/${name}`, name.replaceAll('/', '\\'), `../${name}`])] =
        parts[name] ?? new Uint8Array();
    else parts[name] = encoder.encode(mutated(random, decoder.decode(parts[name])));
  }
  return zipSync(parts, { level: 1 });
}

/** Mutants of workbook files: recalculated, or refused in a sentence, and never changed themselves. */
export function packageCalls(functions: LoadedFunctions, workbooks: readonly Uint8Array[]): FuzzKind {
  return {
    name: 'packages',
    async call(random, keep) {
      const bytes = mutant(random, random.pick(workbooks));
      keep(bytes);
      return await recalculated(bytes, functions);
    },
  };
}

/** Recalculates a file; says what is wrong with what comes of it. */
export async function recalculated(
  bytes: Uint8Array,
  functions: LoadedFunctions,
): Promise<string | undefined> {
  const before = Buffer.from(bytes);
  try {
    const { bytes: written } = await recalculateWorkbook(bytes, functions);
    await recalculateWorkbook(written, functions);
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) return thrown(error);
    if (!/^[^\n]+\.$/.test(error.message)) return `is refused without a sentence: ${error.message}`;
  }
  return before.equals(bytes) ? undefined : 'changes the source';
}
