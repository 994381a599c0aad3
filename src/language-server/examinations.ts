/** What is known of each archive of which an editor shows a file: read anew a moment after whoever types pauses. */
import type { ReadArchive } from "../reader/read-archive-files.ts";
import type { Problem } from "../records/problem.ts";

/** An archive as it would be were all saved. */
export interface Examination {
  readonly read: ReadArchive;
  readonly problems: readonly Problem[];
}

/** Examines an archive with some of its files as they are in an editor, by their paths in it. */
export type Examine = (dir: string, unsaved: ReadonlyMap<string, string>) => Promise<Examination>;

export interface Examinations {
  /** The last that is known; a new one is waited for where that does not serve. */
  readonly last: (
    dir: string,
    serves: (read: ReadArchive) => boolean,
  ) => Promise<Examination | undefined>;
  /** Examines an archive anew, once it was quiet for a moment. */
  readonly again: (dir: string) => void;
  readonly end: () => void;
}

export interface ExaminationNeeds {
  readonly examine: Examine;
  /** The texts that are open, of an archive. */
  readonly unsaved: (dir: string) => ReadonlyMap<string, string>;
  /** Is told of each examination, and of the texts that it was made with. */
  readonly examined: (
    dir: string,
    examination: Examination,
    unsaved: ReadonlyMap<string, string>,
  ) => void;
  /** Is told why one failed. */
  readonly failed: (cause: unknown) => void;
}

/** As long as a pause in typing. */
const quietMs = 250;

interface Known {
  last: Examination | undefined;
  running: Promise<void> | undefined;
  timer: NodeJS.Timeout | undefined;
  /** Whether something changed since the one that runs began. */
  isStale: boolean;
}

export function keepExaminations(needs: ExaminationNeeds): Examinations {
  const known = new Map<string, Known>();
  const of = (dir: string): Known => {
    const it = known.get(dir) ?? {
      ...{ last: undefined, running: undefined, timer: undefined, isStale: false },
    };
    known.set(dir, it);
    return it;
  };
  const run = async (dir: string, it: Known): Promise<void> => {
    do {
      it.isStale = false;
      try {
        const unsaved = needs.unsaved(dir);
        it.last = await needs.examine(dir, unsaved);
        if (!it.isStale) needs.examined(dir, it.last, unsaved);
      } catch (cause) {
        needs.failed(cause);
      }
    } while (it.isStale);
    it.running = undefined;
  };
  const begin = (dir: string, it: Known): Promise<void> => {
    it.isStale = it.running !== undefined;
    it.running ??= run(dir, it);
    return it.running;
  };
  return {
    async last(dir, serves) {
      const it = of(dir);
      if (!it.last || !serves(it.last.read)) await begin(dir, it);
      return it.last;
    },
    again(dir) {
      const it = of(dir);
      clearTimeout(it.timer);
      it.timer = setTimeout(() => void begin(dir, it), quietMs);
    },
    end() {
      for (const { timer } of known.values()) clearTimeout(timer);
    },
  };
}
