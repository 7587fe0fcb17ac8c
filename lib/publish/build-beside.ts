import { diskFault } from "./disk-fault.ts";
import { takeLock } from "./lock.ts";
import { dropStaging, openStaging, swapIn } from "./staging.ts";

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** Runs `work` on an empty folder beside `out`, holding the lock of `out`; `done` puts the folder in the place of `out`. However it ends, by an error or a signal too, lock and folder are gone. Throws a Stop when the disk is at fault. */
export async function buildBeside<T>(
  out: string,
  work: (staging: string, done: () => void) => Promise<T>,
): Promise<T> {
  const unlock = takeLock(out);
  let staging: string | undefined;
  const leave = () => {
    if (staging) dropStaging(staging);
    unlock();
  };
  const interrupted = () => process.exit(130);
  process.on("exit", leave);
  for (const signal of signals) process.prependListener(signal, interrupted);
  try {
    const folder = openStaging(out);
    staging = folder;
    return await work(folder, () => {
      swapIn(folder, out);
      staging = undefined;
    });
  } catch (error) {
    throw diskFault(error, out) ?? error;
  } finally {
    for (const signal of signals) process.off(signal, interrupted);
    process.off("exit", leave);
    leave();
  }
}
