/**
 * Milliseconds of processor time that a run takes in this process, as on a quiet machine: a core that is shared or slow
 * takes longer for the same, so a work of known size is measured before and after, and the time is taken in its measure.
 */
export async function processorMs(run: () => unknown): Promise<number> {
  const before = slowness();
  const spent = await spentMs(run);
  return spent / Math.max(1, (before + slowness()) / 2);
}

async function spentMs(run: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** What a turn of the known work takes on a quiet machine. */
const quietMs = 12;
const turns = 6;

function slowness(): number {
  const before = process.cpuUsage();
  for (let turn = 0; turn < turns; turn += 1) knownWork();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000 / turns / quietMs;
}

/** Numbers, small objects and a map, as calculations use them. */
function knownWork(): number {
  const objects: { key: number }[] = [];
  let key = 1;
  for (let step = 0; step < 400_000; step += 1) {
    key = (key * 1_103_515_245 + 12_345) % 2_147_483_648;
    if (step % 16 === 0) objects.push({ key });
  }
  const counts = new Map<number, number>();
  for (const each of objects) counts.set(each.key % 4096, (counts.get(each.key % 4096) ?? 0) + 1);
  return counts.size;
}
