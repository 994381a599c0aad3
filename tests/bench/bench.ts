/**
 * Runs one benchmark by its name: `npm run bench -- pictures`. What follows the name goes to it.
 * A benchmark prints what it measured and says whether its targets are met.
 */
interface Benchmark {
  run(args: string[]): Promise<boolean>;
}

const benchmarks: Record<string, () => Promise<Benchmark>> = {
  build: () => import("./build.ts"),
  catalogue: () => import("./catalogue.ts"),
  chemistry: () => import("./chemistry.ts"),
  data: () => import("./data.ts"),
  facets: () => import("./facets.ts"),
  pictures: () => import("./pictures.ts"),
  reading: () => import("./reading.ts"),
  serve: () => import("./serve.ts"),
  start: () => import("./start.ts"),
};

const [name = "", ...args] = process.argv.slice(2);
const load = benchmarks[name];
if (!load) {
  console.error(`Name a benchmark: ${Object.keys(benchmarks).sort().join(", ")}.`);
  process.exitCode = 2;
} else {
  const { run } = await load();
  process.exitCode = (await run(args)) ? 0 : 1;
}
