import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    setupFiles: ["tests/support/same-seed.ts"],
    pool: "forks",
    maxWorkers: "100%",
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
});
