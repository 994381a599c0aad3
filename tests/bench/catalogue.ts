import { type Part, parts, runParts } from "./catalogue-run.ts";
import { makeLargeArchive } from "./large-archive.ts";

/**
 * Times what a build thinks of an archive of 1,000, of 4,000 and of 10,000 tiles, without files and
 * pictures, in processor time, of which other work on the machine takes none. What a tile costs must
 * not grow with the archive, and 10,000 must not take longer than the target. The quickest of some
 * turns counts.
 */
const TARGETS = { seconds: 2, growth: 1.25 };
const SIZES = [1_000, 4_000, 10_000];
const TURNS = 3;

type Times = Readonly<Record<Part | "all", number>>;

export async function run(): Promise<boolean> {
  timeParts(makeLargeArchive(SIZES[0] ?? 0));
  const measured = SIZES.map((size) => ({ size, times: quickest(size) }));
  console.log("Processor time in milliseconds, and for each tile in microseconds");
  console.log(["tiles", ...parts, "all"].map((word) => word.padStart(16)).join(""));
  for (const { size, times } of measured) console.log(tellRow(size, times));
  const first = measured[0];
  const last = measured.at(-1);
  if (!first || !last) return false;
  const growth = last.times.all / last.size / (first.times.all / first.size);
  const seconds = last.times.all / 1000;
  console.log(
    `A tile costs ${growth.toFixed(2)} times as much (target ${TARGETS.growth}); ${last.size} took ${seconds.toFixed(1)} s (target ${TARGETS.seconds})`,
  );
  return growth <= TARGETS.growth && seconds <= TARGETS.seconds;
}

function tellRow(size: number, times: Times): string {
  const cells = [...parts, "all" as const].map(
    (part) => `${times[part].toFixed(0)} (${((1000 * times[part]) / size).toFixed(0)})`,
  );
  return [String(size), ...cells].map((cell) => cell.padStart(16)).join("");
}

function quickest(size: number): Times {
  const turns = Array.from({ length: TURNS }, () => timeParts(makeLargeArchive(size)));
  return turns.reduce((best, turn) => (turn.all < best.all ? turn : best));
}

/** Every turn has an archive of its own: what is remembered of one must not make the next quick. */
function timeParts(archive: ReturnType<typeof makeLargeArchive>): Times {
  const times = new Map<Part, number>();
  runParts(archive, (part, work) => {
    const begun = process.cpuUsage();
    const done = work();
    const { user, system } = process.cpuUsage(begun);
    times.set(part, (user + system) / 1000);
    return done;
  });
  const each = Object.fromEntries(times) as Record<Part, number>;
  return { ...each, all: [...times.values()].reduce((sum, one) => sum + one, 0) };
}
