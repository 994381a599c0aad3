/** Long work that leaves room for others: a server in the same process answers meanwhile. */
import { setImmediate } from "node:timers/promises";

/** So long a page may have to wait for, in milliseconds, without anybody noticing. */
const longest = 10;

/** Does something with each of many things, and lets others have their turn in between. */
export async function inTurns<T>(
  things: Iterable<T>,
  work: (thing: T) => void | Promise<void>,
): Promise<void> {
  let begun = performance.now();
  for (const thing of things) {
    await work(thing);
    if (performance.now() - begun < longest) continue;
    await setImmediate();
    begun = performance.now();
  }
}
