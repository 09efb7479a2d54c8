/** Milliseconds of processor time that a run takes in this process: what else the machine does makes no difference. */
export async function processorMs(run: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
