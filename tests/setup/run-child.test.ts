import { spawn } from "node:child_process";
import { expect, test } from "vitest";

const runChild = JSON.stringify(new URL("../../lib/setup/run-child.mjs", import.meta.url).href);
const alive = (pid: number): boolean => {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
};

/** Starts a launcher whose child prints its own id, runs `body`, and would go on for a minute. */
function launch(body: string) {
  const child = `console.log(process.pid); ${body}; setTimeout(() => {}, 60_000);`;
  const words = JSON.stringify(["-e", child]);
  const launcher = `import(${runChild}).then(async ({ runChild }) => process.exit(await runChild(${words}, {})))`;
  return spawn(process.execPath, ["-e", launcher], { stdio: ["ignore", "pipe", "inherit"] });
}

test.each([
  ["SIGTERM", "", 143],
  ["SIGINT", "", 130],
  ["SIGTERM", "process.on('SIGTERM', () => process.exit(4))", 4],
] as const)(
  "%s reaches the child, whose end is ours and which leaves no orphan.",
  async (signal, body, code) => {
    const launcher = launch(body);
    const pid = await new Promise<number>((said) =>
      launcher.stdout.once("data", (id) => said(Number(id))),
    );
    await new Promise((later) => setTimeout(later, 100));
    launcher.kill(signal);
    const ended = await new Promise((done) => launcher.once("close", done));
    expect(ended).toBe(code);
    expect(alive(pid)).toBe(false);
  },
);
