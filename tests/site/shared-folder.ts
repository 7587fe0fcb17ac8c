import { tmpdir } from "node:os";
import { join } from "node:path";

/** Where the test files of one run find what they share; removed when the run ends. */
export const sharedFolder = join(tmpdir(), `trayleaf-tests-${process.pid}`);
