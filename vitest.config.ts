import { defineConfig } from "vitest/config";

/** Tests that start programs or browsers, or set variables: each file has its modules to itself. All others share theirs. */
const alone = ["begin", "cli", "impose", "print", "publish", "serve", "setup", "site"].map(
  (folder) => `tests/${folder}/**/*.test.ts`,
);

export default defineConfig({
  test: {
    pool: "threads",
    globalSetup: ["tests/clean-up.ts"],
    testTimeout: 60_000,
    passWithNoTests: false,
    allowOnly: false,
    projects: [
      {
        extends: true,
        test: {
          name: "shared",
          include: ["tests/**/*.test.ts"],
          exclude: alone,
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: { name: "alone", include: alone, maxWorkers: 3, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
