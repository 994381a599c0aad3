import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    pool: "forks",
    maxWorkers: "100%",
    testTimeout: 30_000,
    hookTimeout: 120_000,
  },
});
