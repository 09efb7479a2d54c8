// npm run sideload, npm run sideload:stop: loads the add-in from this machine into the desktop spreadsheet host.
// Exit code 0: done, 1: no host, or it could not be loaded, 2: wrong call.
import path from 'node:path';
import { ensure, root } from './ensure.mjs';
import { localAddress } from './manifest/address.mjs';
import { hasSpreadsheetHost, noHost } from './sideload/machine.mjs';

const [action] = process.argv.slice(2);
const manifest = path.join(root, 'dist', 'manifest.xml');

async function start() {
  const { default: certificates } = await import('office-addin-dev-certs');
  const { default: settings } = await import('office-addin-dev-settings');
  const { assembleAddIn } = await import('./package/assemble.mjs');
  const { serveFolder } = await import('./sideload/localHost.mjs');
  const port = Number(new URL(localAddress).port);
  await serveFolder(await assembleAddIn(), port, await certificates.getHttpsServerOptions());
  console.log(`Serving the add-in at ${localAddress}; Ctrl+C ends it.`);
  await settings.sideloadAddIn(manifest);
  console.log('The spreadsheet host opens with Tonrow. npm run sideload:stop takes it out again.');
}

async function stop() {
  const { default: settings } = await import('office-addin-dev-settings');
  await settings.unregisterAddIn(manifest);
  console.log('Tonrow is taken out of the spreadsheet host; close the host and open it again.');
}

const run = { start, stop }[action];
if (!run) {
  console.error('Write: npm run sideload, or npm run sideload:stop.');
  process.exit(2);
}
if (!hasSpreadsheetHost()) {
  console.error(noHost);
  process.exit(1);
}
ensure({ development: true });
try {
  await run();
} catch (error) {
  console.error(`The add-in could not be loaded or taken out: ${error.message}`);
  process.exit(1);
}
