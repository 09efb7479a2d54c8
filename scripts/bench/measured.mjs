// A command as a whole: how long it took, the processor time of all its processes, and the peak memory of the largest.
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

const everyMs = 20;

/** Memory that a process, or one that it started, has had at most, in MB; 0 where the system does not tell. */
function peakMb(pid) {
  try {
    const own = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
    const children = readdirSync(`/proc/${pid}/task`).flatMap((thread) =>
      readFileSync(`/proc/${pid}/task/${thread}/children`, 'utf8').split(' ').filter(Boolean),
    );
    return children.map(peakMb).reduce((most, one) => Math.max(most, one), Number(own?.[1] ?? 0) / 1024);
  } catch {
    return 0;
  }
}

/** The shell tells on its last line what its children used: `1m2.34s 0m0.56s`. */
const thenTimes = '"$@"; code=$?; times >&2; exit $code';
const childTimes = /(\d+)m([\d.]+)s (\d+)m([\d.]+)s\s*$/;

/** Runs a command to its end; undefined where it is not installed. */
export async function measured(command, args) {
  const started = performance.now();
  const child = spawn('sh', ['-c', thenTimes, 'sh', command, ...args], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (text) => (said += text));
  let peak = 0;
  const timer = setInterval(() => (peak = Math.max(peak, peakMb(child.pid))), everyMs);
  const status = await new Promise((resolve) => child.on('close', resolve));
  clearInterval(timer);
  if (status === 127) return undefined;
  const [, ...times] = childTimes.exec(said) ?? [];
  const [userMinutes, user, systemMinutes, system] = times.map(Number);
  const wall = (performance.now() - started) / 1000;
  return { status, said, wall, cpu: 60 * (userMinutes + systemMinutes) + user + system, peakMb: peak };
}

/** The middle one of some numbers. */
export function median(numbers) {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
