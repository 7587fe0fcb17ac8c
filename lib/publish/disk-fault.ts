import { Stop } from "../model/stop.ts";

const faults: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EFBIG: "a file may not be that large",
  EROFS: "the disk can only be read",
  EACCES: "this user may not write there",
  EPERM: "this user may not write there",
  EIO: "the disk reports an error",
  EMFILE: "too many files are open",
  ENFILE: "too many files are open",
};

/** The Stop for an error of the disk while `out` was made; undefined for any other error. */
export function diskFault(error: unknown, out: string): Stop | undefined {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const fault = faults[code];
  return fault === undefined
    ? undefined
    : new Stop(
        3,
        `${out} could not be written: ${fault} (${code}).`,
        "Make room or choose another --out; what was there before is untouched.",
      );
}
