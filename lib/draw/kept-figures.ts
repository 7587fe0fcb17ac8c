import { createHash } from "node:crypto";
import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import type { FigureStore, KeptFigure } from "./drawn-once.ts";

/** A demo library has some 900 figures; older ones than this many are forgotten. */
const most = 5_000;

const digest = (text: string): string => createHash("sha256").update(text).digest("hex");

/** What a file of figures holds: its digest on the first line, its JSON on the second. Nothing where there is none or it is not whole. */
function readFigures(file: string): Map<string, KeptFigure> {
  if (!statSync(file, { throwIfNoEntry: false })?.isFile()) return new Map();
  const text = readFileSync(file, "utf8");
  const end = text.indexOf("\n");
  const body = text.slice(end + 1);
  if (end < 0 || text.slice(0, end) !== digest(body)) return new Map();
  return new Map(JSON.parse(body) as [string, KeptFigure][]);
}

/** Figures kept in a file from one run to the next, for one state of the code that draws them. The file is read when the first
 * is asked for; `save` writes it, with what this run used first, when any was drawn anew. A file that cannot be written is
 * left as it is: then they are drawn again. */
export function keptFigures(file: string): FigureStore & { save(): void } {
  let before: Map<string, KeptFigure> | undefined;
  const used = new Map<string, KeptFigure>();
  let anew = false;
  return {
    get(key) {
      before ??= readFigures(file);
      const kept = used.get(key) ?? before.get(key);
      if (kept) used.set(key, kept);
      return kept;
    },
    set(key, kept) {
      anew = true;
      used.set(key, kept);
    },
    save() {
      if (!anew) return;
      const all = new Map([...used, ...(before ?? [])]);
      const body = JSON.stringify([...all].slice(0, most));
      const fresh = `${file}.${process.pid}`;
      try {
        writeFileSync(fresh, `${digest(body)}\n${body}`);
        renameSync(fresh, file);
      } catch {
        rmSync(fresh, { force: true });
      }
    },
  };
}
