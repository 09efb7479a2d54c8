// npm run package -- --url https://…   makes out/package, a folder for any static host.
// Exit code 0: done, 1: the build or the manifest has a fault, 2: wrong call.
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { ensure, root } from './ensure.mjs';
import { AddressRefused, readAddress } from './manifest/address.mjs';

const address = addressOfCall(process.argv.slice(2));
ensure({ development: true });
const { assembleAddIn } = await import('./package/assemble.mjs');
const { hostedFiles } = await import('./package/hostedFiles.mjs');
const { manifestProblems } = await import('./manifest/check.mjs');

const template = readFileSync(path.join(root, 'manifest', 'manifest.xml'), 'utf8');
const files = hostedFiles(await assembleAddIn(), template, address);
const problems = manifestProblems(files.get('manifest.xml').toString('utf8'), {
  address,
  read: (name) => files.get(name),
});
if (problems.length > 0) {
  for (const { name, message } of problems) console.error(`Manifest, ${name}: ${message}`);
  process.exit(1);
}
const folder = writeFolder(files);
console.log(`Wrote ${files.size} files into ${path.relative(process.cwd(), folder)} for ${address}.`);
console.log(
  'Copy the folder to that address, then give its manifest.xml to the host (docs/administrator.md).',
);

function addressOfCall(args) {
  try {
    const { values } = parseArgs({ args, options: { url: { type: 'string' } } });
    return readAddress(values.url);
  } catch (error) {
    const wrongCall = typeof error.code === 'string' && error.code.startsWith('ERR_PARSE_ARGS');
    if (!(error instanceof AddressRefused) && !wrongCall) throw error;
    console.error(
      wrongCall ? 'Write: npm run package -- --url https://apps.example.com/tonrow' : error.message,
    );
    process.exit(2);
  }
}

/** Writes beside the target first, so that the folder is never half there. */
function writeFolder(contents) {
  const target = path.join(root, 'out', 'package');
  const work = `${target}-${process.pid}`;
  for (const [name, bytes] of contents) {
    mkdirSync(path.dirname(path.join(work, name)), { recursive: true });
    writeFileSync(path.join(work, name), bytes);
  }
  rmSync(target, { recursive: true, force: true });
  renameSync(work, target);
  return target;
}
