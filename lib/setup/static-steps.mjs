import { spawn } from "node:child_process";
import { join } from "node:path";
import { places } from "./places.mjs";

const tool = (/** @type {string[]} */ ...path) => join(places.root, "node_modules", ...path);

/** The steps that read the project without running it: name, and the words that Node runs. */
const steps = [
  { name: "types", words: [tool("typescript", "bin", "tsc"), "-p", "."] },
  {
    name: "format and lint",
    words: [tool("@biomejs", "biome", "bin", "biome"), "check", "--error-on-warnings"],
  },
  {
    name: "import directions",
    words: [
      tool("dependency-cruiser", "bin", "dependency-cruise.mjs"),
      ...["--config", ".dependency-cruiser.cjs", "lib", "tests"],
    ],
  },
  { name: "unused code", words: [tool("knip", "bin", "knip.js"), "--no-progress"] },
];

/**
 * @param {typeof steps[number]} step
 * @returns {Promise<boolean>}
 */
function passes({ name, words }) {
  const started = performance.now();
  return new Promise((done) => {
    const child = spawn(process.execPath, words, {
      cwd: places.root,
      stdio: ["ignore", "pipe", "pipe"],
      env: { ...process.env, NO_COLOR: "1" },
    });
    let said = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.on("data", (part) => {
        said += part;
      });
    }
    child.on("close", (code) => {
      const seconds = ((performance.now() - started) / 1000).toFixed(1).padStart(5);
      const told = code === 0 ? "ok" : `FAILED\n${said.trimEnd()}`;
      process.stdout.write(`${name.padEnd(18)}${seconds} s  ${told}\n`);
      done(code === 0);
    });
  });
}

/** Runs all static steps side by side, a line each, and tells whether all passed. */
export async function staticSteps() {
  const results = await Promise.all(steps.map(passes));
  return results.every(Boolean);
}
