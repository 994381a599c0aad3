import { type Profiler, Session } from "node:inspector";
import { project } from "../house/files.ts";

/** How often each of the program's own functions was run through, loops in it included. */
export type Work = ReadonlyMap<string, number>;

export interface WorkCounter {
  readonly count: (work: () => void) => Work;
  readonly stop: () => void;
}

/**
 * Counts what work does, function by function. It is the same on every machine and however busy that
 * is, as no clock's reading is. What the language's own functions do inside, such as copying a list,
 * is not counted.
 *
 * Only code that is loaded after this began is counted in full, so import it afterwards.
 */
export function startCounting(): WorkCounter {
  const session = new Session();
  session.connect();
  session.post("Profiler.enable");
  session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
  return {
    count: (work) => {
      takeCounts(session);
      work();
      return takeCounts(session);
    },
    stop: () => {
      session.post("Profiler.stopPreciseCoverage");
      session.disconnect();
    },
  };
}

/** What was counted since the last time, by file, function and its place in the file. */
function takeCounts(session: Session): Work {
  const counts = new Map<string, number>();
  session.post("Profiler.takePreciseCoverage", (_, { result }) => {
    for (const { url, functions } of result) {
      const file = findOwn(url);
      if (file === undefined) continue;
      for (const of of functions) counts.set(nameOf(file, of), mostOften(of));
    }
  });
  return counts;
}

function nameOf(file: string, { functionName, ranges }: Profiler.FunctionCoverage): string {
  return `${file} ${functionName || "a function"} at ${ranges[0]?.startOffset}`;
}

/** A loop in a function is run through more often than the function. */
function mostOften({ ranges }: Profiler.FunctionCoverage): number {
  return Math.max(...ranges.map(({ count }) => count));
}

function findOwn(url: string): string | undefined {
  const [, file] = url.replaceAll("\\", "/").split(`${project.replaceAll("\\", "/")}src/`);
  return file;
}
