import { configDefaults, defineConfig } from "vitest/config";

/** How often a function is run through is counted in full only of code that is loaded meanwhile. */
const counted = ["tests/catalogue/linear.test.ts"];

export default defineConfig({
  test: {
    setupFiles: ["tests/support/same-seed.ts", "tests/support/on-no-forge.ts"],
    pool: "forks",
    maxWorkers: "100%",
    restoreMocks: true,
    testTimeout: 120_000,
    hookTimeout: 300_000,
    projects: [
      {
        extends: true,
        test: {
          name: "tests",
          include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
          exclude: [...configDefaults.exclude, ...counted],
          // A fresh copy of every module for every file took more than half of the processor time: so
          // a test leaves nothing behind in a module, in the environment or in the folder it stands in.
          isolate: false,
        },
      },
      { extends: true, test: { name: "counted", include: counted, isolate: true } },
    ],
  },
});
