import { SetupStop } from "./setup-stop.mjs";

/**
 * Throws a SetupStop when a Node version such as "20.18.3" is older than 20.19.
 * @param {string} version
 */
export function requireNode(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  throw new SetupStop(
    `Trayleaf needs Node 20.19 or newer; this is Node ${version}. Install a newer Node and start again.`,
  );
}
