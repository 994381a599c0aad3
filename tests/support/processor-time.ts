/** How long work takes, whatever else the computer is doing meanwhile. */

/** Does some work and gives the milliseconds that the processor spent on this program meanwhile. */
export async function processorTimeOf(work: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
