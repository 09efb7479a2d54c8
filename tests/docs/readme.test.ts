import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';

const readme = readFileSync(path.join(root, 'README.md'), 'utf8');
/** The lines of its blocks, and what stands within a line. */
const commands = [
  ...[...readme.matchAll(/^\s*(npm .+)$/gm)].map(([, command = '']) => command),
  ...[...readme.matchAll(/`(npm [^`]+)`/g)].map(([, command = '']) => command),
].map((command) => command.trim());

/** What runs everything, this test too; what tests beside this one read while it would be made anew; and what needs an
 * address of the reader's. */
const elsewhere = ['npm test', 'npm run build', 'npm run package -- --url https://…'];
const asked = [...new Set(commands)].filter((command) => !elsewhere.includes(command));

it('has the commands that are tried here', () => {
  expect(asked.length).toBeGreaterThan(5);
  for (const each of elsewhere) expect(commands).toContain(each);
});

const mostMs = 240_000;

it.each(asked)(
  '%s runs as printed',
  (command) => {
    mkdirSync(path.join(root, 'out'), { recursive: true });
    // The page of npm start is served for ever.
    const once = command === 'npm start' ? 'npm start -- --once' : command;
    const { status, stdout, stderr } = spawnSync('sh', ['-c', once], { cwd: root, encoding: 'utf8' });
    expect(status, `${stdout}\n${stderr}`).toBe(0);
  },
  mostMs,
);

it(
  'prints sentences in its sample that the command prints too',
  () => {
    const { stdout } = spawnSync('sh', ['-c', 'COLUMNS=400 node scripts/start.mjs --once'], {
      cwd: root,
      encoding: 'utf8',
    });
    const sample = readme.slice(readme.indexOf('Mark  Verdict'), readme.indexOf('In the page that follows'));
    const words = (text: string) => text.replace(/\s+/g, ' ');
    const sentences = words(sample).match(/(?:Understood|Punch force is|Bar shear square of)[^.]+\./g) ?? [];
    expect(sentences.length).toBe(3);
    for (const sentence of sentences) expect(words(stdout)).toContain(sentence);
  },
  mostMs,
);
