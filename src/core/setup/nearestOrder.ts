import type { GaugeSetting } from './gaugeSetting.js';
import { sameMm } from './samePosition.js';

/** Where the gauges were last set; a stop that was not is not there. */
type Standing = { fence: number } & Partial<Record<GaugeSetting['stop'], number>>;

/**
 * Settings in an order of short moves: from the one with the least fence and stop always to the next that leaves
 * the fence, then the stop where it stands, and of these the shortest way. A good order, not proven to be the best.
 */
export function inNearestOrder(settings: readonly GaugeSetting[]): GaugeSetting[] {
  const left = [...settings].sort(
    (a, b) => a.fenceMm - b.fenceMm || sideOf(a) - sideOf(b) || a.stopMm - b.stopMm,
  );
  const ordered: GaugeSetting[] = [];
  let standing: Standing | undefined;
  while (left.length > 0) {
    const next = standing ? nearestTo(standing, left) : 0;
    const [setting] = left.splice(next, 1);
    if (!setting) break;
    ordered.push(setting);
    standing = { ...standing, fence: setting.fenceMm, [setting.stop]: setting.stopMm };
  }
  return ordered;
}

function sideOf({ stop }: GaugeSetting): number {
  return stop === 'left' ? 0 : 1;
}

function nearestTo(standing: Standing, settings: readonly GaugeSetting[]): number {
  let nearest = 0;
  let leastMm = Infinity;
  for (const [at, setting] of settings.entries()) {
    const mm = moveOf(standing, setting);
    if (mm < leastMm) [nearest, leastMm] = [at, mm];
  }
  return nearest;
}

/** Longer than any way of a gauge: what moves counts before how far. Several stops may stand along one fence. */
const gaugeMm = { stop: 1e6, fence: 3e6 };

function moveOf(standing: Standing, to: GaugeSetting): number {
  const fenceMm = Math.abs(standing.fence - to.fenceMm);
  const stood = standing[to.stop];
  const stopMm = stood === undefined ? gaugeMm.stop : Math.abs(stood - to.stopMm);
  return fenceMm + stopMm + (fenceMm > sameMm ? gaugeMm.fence : 0) + (stopMm > sameMm ? gaugeMm.stop : 0);
}
