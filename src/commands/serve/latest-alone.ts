/** Work that is asked for more often than it can be done. */

export interface LatestAlone {
  /** Does some work as soon as what is being done is done, unless other work is asked for before. */
  readonly next: (work: () => Promise<void>) => void;
  /** Whether work waits for what is being done. */
  readonly isAwaited: () => boolean;
}

/** Does one thing at a time, and of those that wait the last alone; none of them may reject. */
export function latestAlone(): LatestAlone {
  let waiting: (() => Promise<void>) | undefined;
  let isBusy = false;
  const goOn = async () => {
    isBusy = true;
    while (waiting) {
      const work = waiting;
      waiting = undefined;
      await work();
    }
    isBusy = false;
  };
  return {
    next(work) {
      waiting = work;
      if (!isBusy) void goOn();
    },
    isAwaited: () => waiting !== undefined,
  };
}
