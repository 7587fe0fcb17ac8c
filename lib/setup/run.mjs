import { bench } from "./bench.mjs";
import { commandLine } from "./command-line.mjs";
import { endsPlainly } from "./ends-plainly.mjs";
import { SetupStop } from "./setup-stop.mjs";
import { quickTests, wholeTests } from "./test-steps.mjs";

const [task = "", ...words] = process.argv.slice(2);

/** @type {Readonly<Record<string, () => Promise<number>>>} */
const tasks = {
  start: () => commandLine(["build", ...words]),
  mutate: () => commandLine(["mutate", ...words]),
  bench: () => bench(words),
  serve: () => commandLine(["serve", ...words]),
  test: () => wholeTests(words),
  "test-quick": () => quickTests(words),
};

await endsPlainly(() => {
  const run = tasks[task];
  if (!run) {
    throw new SetupStop(`Unknown task "${task}". Known: ${Object.keys(tasks).join(", ")}.`, 2);
  }
  return run();
});
