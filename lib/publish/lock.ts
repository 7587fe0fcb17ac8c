import { closeSync, mkdirSync, openSync, readFileSync, rmSync, writeSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { Stop } from "../model/stop.ts";
import { beside } from "./beside.ts";
import { diskFault } from "./disk-fault.ts";

const alive = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
};

/** Takes the build lock of `out` and gives back its release; a lock left by a dead process is taken over. */
export function takeLock(out: string): () => void {
  mkdirSync(dirname(resolve(out)), { recursive: true });
  const file = beside(out, "lock");
  const release = () => rmSync(file, { force: true });
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      const handle = openSync(file, "wx");
      try {
        writeSync(handle, String(process.pid));
      } catch (error) {
        release();
        throw error;
      } finally {
        closeSync(handle);
      }
      return release;
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      if (code !== "EEXIST") {
        throw (
          diskFault(error, out) ??
          new Stop(3, `Cannot write beside ${out} (${code})`, "Make the folder writable.")
        );
      }
      const holder = Number(readFileSync(file, "utf8")) || 0;
      if (holder > 0 && alive(holder)) {
        throw new Stop(4, `Another build (process ${holder}) is writing ${out}`, "Wait for it.");
      }
      rmSync(file, { force: true });
    }
  }
  throw new Stop(4, `Another build keeps taking the lock of ${out}`, "Wait for it.");
}
