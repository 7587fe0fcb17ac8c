import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { Stop } from "../model/stop.ts";
import { beside } from "./beside.ts";
import { diskFault } from "./disk-fault.ts";
import { readManifest } from "./manifest.ts";

const remove = (path: string) => rmSync(path, { recursive: true, force: true });

/** The staging folder that a journal names, looked for beside `out`; none when the journal was cut short. */
function journalled(out: string, journalFile: string): string | undefined {
  const name = readFileSync(journalFile, "utf8");
  const staging = join(dirname(resolve(out)), name);
  const ours = name.startsWith(`.${basename(resolve(out))}-staging-`) && name === basename(name);
  return ours && readManifest(staging) ? staging : undefined;
}

/** Finishes or undoes a swap that was interrupted, and removes staging folders left behind. Call it holding the lock. */
export function recover(out: string): void {
  const journalFile = beside(out, "journal");
  if (existsSync(journalFile)) {
    const staging = journalled(out, journalFile);
    const previous = beside(out, "previous");
    if (!existsSync(out)) {
      if (staging) renameSync(staging, out);
      else if (existsSync(previous)) renameSync(previous, out);
    }
    remove(previous);
    rmSync(journalFile, { force: true });
  }
  const parent = dirname(resolve(out));
  if (!existsSync(parent)) return;
  const stale = `.${basename(resolve(out))}-staging-`;
  for (const name of readdirSync(parent)) if (name.startsWith(stale)) remove(join(parent, name));
}

/** An empty folder beside `out` to build into. */
export function openStaging(out: string): string {
  const staging = beside(out, `staging-${process.pid}`);
  try {
    mkdirSync(staging, { recursive: true, mode: 0o755 });
  } catch (error) {
    throw (
      diskFault(error, out) ??
      new Stop(
        3,
        `Cannot write beside ${out} (${(error as NodeJS.ErrnoException).code})`,
        "Make the folder writable.",
      )
    );
  }
  return staging;
}

/** Puts the finished staging folder in the place of `out` by two renames, with a journal between them. */
export function swapIn(staging: string, out: string): void {
  const previous = beside(out, "previous");
  const journalFile = beside(out, "journal");
  remove(previous);
  writeFileSync(journalFile, basename(staging));
  if (existsSync(out)) renameSync(out, previous);
  renameSync(staging, out);
  remove(previous);
  rmSync(journalFile, { force: true });
}

/** Drops a staging folder of a failed build. */
export const dropStaging = (staging: string): void => remove(staging);
