import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    setupFiles: ["tests/support/same-seed.ts"],
    pool: "forks",
    maxWorkers: "100%",
    // A fresh copy of every module for every file took more than half of the processor time: so a
    // test leaves nothing behind in a module, in the environment or in the folder it stands in.
    isolate: false,
    restoreMocks: true,
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
});
