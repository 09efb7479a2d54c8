import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

/** Has a headless desktop spreadsheet open a workbook, calculate it, and save it as .xlsx. */
export function calculatedElsewhere(bytes: Uint8Array): Uint8Array {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'referee-'));
  try {
    const source = path.join(folder, 'in.xlsx');
    const out = path.join(folder, 'out');
    writeFileSync(source, bytes);
    const profile = `-env:UserInstallation=file://${path.join(folder, 'profile')}`;
    const args = [
      profile,
      '--headless',
      '--convert-to',
      'xlsx:Calc MS Excel 2007 XML',
      '--outdir',
      out,
      source,
    ];
    const result = spawnSync('soffice', args, { encoding: 'utf8', timeout: 180_000 });
    if (result.status !== 0) throw new Error(`The referee failed: ${result.stderr || String(result.error)}`);
    return new Uint8Array(readFileSync(path.join(out, 'in.xlsx')));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
