import { requireNode } from "./require-node.mjs";
import { SetupStop } from "./setup-stop.mjs";

/**
 * Runs a program to its exit code; a SetupStop becomes its message and its own exit code.
 * @param {() => Promise<number>} program
 */
export async function endsPlainly(program) {
  try {
    requireNode(process.versions.node);
    process.exitCode = await program();
  } catch (error) {
    if (!(error instanceof SetupStop)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = error.exit;
  }
}
