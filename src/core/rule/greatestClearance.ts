import type { JobSpec } from './jobSpec.js';

/** Greatest total clearance by the job's specification, mm; undefined where it says nothing. EN 1090-2 (from memory). */
export function greatestClearanceMm(spec: JobSpec): number | undefined {
  return spec.startsWith('EN 1090-2') ? 1 : undefined;
}
