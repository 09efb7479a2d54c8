// Has this machine a desktop spreadsheet host that add-ins can be loaded into?
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const macFolders = ['/Applications', path.join(os.homedir(), 'Applications')];
const windowsKey = 'HKEY_CLASSES_ROOT\\Excel.Application';

const thisMachine = {
  platform: process.platform,
  exists: existsSync,
  hasRegistryKey: (key) => spawnSync('reg', ['query', key], { stdio: 'ignore' }).status === 0,
};

/** Whether a host is installed; `machine` says what to ask of it. */
export function hasSpreadsheetHost({ platform, exists, hasRegistryKey } = thisMachine) {
  if (platform === 'darwin') return macFolders.some((folder) => exists(`${folder}/Microsoft Excel.app`));
  return platform === 'win32' && hasRegistryKey(windowsKey);
}

export const noHost =
  'This machine has no desktop spreadsheet host to load the add-in into: run npm start to see Tonrow check the example quote without one.';
