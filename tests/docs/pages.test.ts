import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { verdicts } from '../../src/core/check/verdict.js';

const docs = path.join(root, 'docs');
const names = readdirSync(docs).filter((name) => name.endsWith('.md'));
const page = (name: string) => readFileSync(path.join(docs, name), 'utf8');
const { scripts } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>;
};
const aboutTheHost = ['estimator.md', 'administrator.md', 'troubleshooting.md'];
const steps = [...page('host-check.md').matchAll(/^(\d+)\. \*\*.+?\*\*/gm)].map(([, number]) =>
  Number(number),
);
const signature = page('host-check.md').split('## Signed')[1] ?? '';

/** Paragraphs, list items and table rows, without blocks of code. */
const pieces = (text: string) =>
  text
    .replace(/```[\s\S]*?```/g, '')
    .split(/\n\s*\n|\n(?=- |\d+\. |\|)/)
    .map((piece) => piece.replace(/\s+/g, ' ').trim())
    .filter((piece) => piece !== '');

describe('the pages', () => {
  it('are there', () => {
    expect(names.sort()).toEqual([
      'administrator.md',
      'architecture.md',
      'estimator.md',
      'headings.md',
      'host-check.md',
      'labels.md',
      'mutants.md',
      'notation.md',
      'reference.md',
      'shop-sheet.md',
      'speed.md',
      'troubleshooting.md',
    ]);
  });

  it.each(names)('%s has a title, text under every heading, and no link that leads nowhere', (name) => {
    const text = page(name);
    expect(text.length).toBeGreaterThan(1500);
    expect(text.replace(/<!--.*-->\s*/, '')).toMatch(/^# \w/);
    const lines = text.split('\n').filter((line) => line !== '');
    lines.forEach((line, at) => {
      if (/^#+ /.test(line)) expect(lines[at + 1] ?? '', `${name}: ${line}`).toMatch(/^[^#]/);
    });
    for (const [, target = ''] of text.matchAll(/\]\(([^)]+)\)/g)) {
      const [file = '', anchor] = target.split('#');
      if (file !== '') expect(existsSync(path.join(docs, file)), `${name}: ${target}`).toBe(true);
      if (anchor) expect(text.toLowerCase(), `${name}: ${target}`).toContain(`\n## ${anchor}\n`);
    }
  });

  it.each(names)('%s names only commands and files that are there', (name) => {
    const text = page(name);
    for (const [, script = ''] of text.matchAll(/npm run (?:--silent )?([\w:]+)/g))
      expect(scripts[script], `${name}: npm run ${script}`).toBeDefined();
    for (const [, file = ''] of text.matchAll(/`((?:examples|manifest|docs|scripts)\/[\w./-]+)`/g))
      expect(existsSync(path.join(root, file)), `${name}: ${file}`).toBe(true);
  });

  it('the page of how it is built names only sources that are there', () => {
    const files = [...page('architecture.md').matchAll(/src\/[\w/-]+(?:\.tsx?)?/g)].map(([file]) => file);
    expect(files.length).toBeGreaterThan(25);
    expect(files.filter((file) => !existsSync(path.join(root, file)))).toEqual([]);
  });

  it('names every word a row can show, in their order', () => {
    const table = page('estimator.md').split('## The words')[1]?.split('\n## ')[0] ?? '';
    const words = table.split('\n').flatMap((line) => line.split('|')[1]?.trim() ?? []);
    expect(words.slice(2)).toEqual([...verdicts]);
  });

  it('carries every caution', () => {
    const caution = page('estimator.md').split('## Caution')[1]?.replace(/\s+/g, ' ') ?? '';
    for (const words of [
      'planning estimates',
      'The plate on the press, its manual and the tool maker',
      "the job's specification, local codes and a licensed engineer govern connections",
      'guards on',
      'eye protection',
      'lock out before changing tools',
      'Never punch over the edge of an existing hole or part of a slug unless the tool is made for it',
      'Never exceed the rating',
      'stripper level and close',
    ])
      expect(caution).toContain(words);
  });
});

describe('the host check', () => {
  it('has ten steps, each with what to expect and room for what was seen', () => {
    expect(steps).toEqual(Array.from({ length: 10 }, (_, at) => at + 1));
    const text = page('host-check.md');
    expect(text.match(/Expect: \S/g)?.length).toBe(10);
    expect(text.match(/Seen:.* · As expected:/g)?.length).toBe(10);
  });

  it('has a place to sign', () => {
    for (const line of ['Host and version', 'System', 'Tonrow version', 'Name and date'])
      expect(signature).toContain(`${line}:`);
  });

  const signed = /Name and date: *\S/.test(signature);

  it.skipIf(signed).each(aboutTheHost)(
    'is not signed: every claim of %s about the host is marked',
    (name) => {
      const claims = pieces(page(name))
        .filter(
          (piece) =>
            !piece.startsWith('#') && !piece.startsWith('What is said here about the spreadsheet host'),
        )
        .filter((piece) => /\bthe (?:web |desktop )?host\b(?! check)/i.test(piece));
      const unmarked = claims.filter((piece) => !/unverified/i.test(piece));
      expect(unmarked).toEqual([]);
      expect(claims.length).toBeGreaterThan(1);
      expect(page(name)).toMatch(/has not been seen in a real one yet/);
    },
  );

  it('settles every claim that is marked', () => {
    const named = aboutTheHost.flatMap((name) =>
      [...page(name).matchAll(/_Unverified:\ssteps?\s([\d, ]+)\._/g)].flatMap(([, list = '']) =>
        list.split(',').map(Number),
      ),
    );
    const marks = aboutTheHost.flatMap((name) => page(name).match(/_Unverified:/g) ?? []);
    expect(marks.length).toBeGreaterThan(15);
    expect(named.length).toBeGreaterThanOrEqual(marks.length);
    expect(named.filter((step) => !steps.includes(step))).toEqual([]);
  });
});
