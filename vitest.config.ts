import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    pool: "threads",
    maxWorkers: 3,
    globalSetup: ["tests/clean-up.ts"],
    testTimeout: 20_000,
    passWithNoTests: false,
    allowOnly: false,
  },
});
