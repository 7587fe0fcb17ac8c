import { rmSync } from "node:fs";
import { sharedFolder } from "./site/shared-folder.ts";

/** Removes what the test files of a run shared. */
export function teardown(): void {
  rmSync(sharedFolder, { recursive: true, force: true });
}
