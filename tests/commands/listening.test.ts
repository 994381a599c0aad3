import { expect, onTestFinished, test } from "vitest";
import { untilStopped } from "../../src/commands/serve/listening.ts";

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

test.each(signals)("a command that shows something ends in order at %s", async (signal) => {
  const before = new Map(signals.map((each) => [each, process.listeners(each)]));
  onTestFinished(() => {
    for (const each of signals)
      for (const listener of process.listeners(each))
        if (!before.get(each)?.includes(listener)) process.off(each, listener);
  });
  let isStopped = false;
  const stopped = untilStopped().then(() => {
    isStopped = true;
  });
  await Promise.resolve();
  expect(isStopped).toBe(false);
  process.emit(signal);
  await stopped;
  expect(isStopped).toBe(true);
});
