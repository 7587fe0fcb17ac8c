import type { LengthTable, ReadingAnswer } from "../model/chain.ts";
import { wholeMm } from "../model/measure.ts";
import type { LengthView } from "../model/sheet.ts";

type Entry = LengthView["columns"][number]["entries"][number];
type Read = LengthTable["readings"][number];

function sameAnswer(a: ReadingAnswer, b: ReadingAnswer): boolean {
  if (a.kind !== b.kind) return false;
  if (a.kind === "next" && b.kind === "next") return a.length === b.length;
  return a.kind !== "gap" || (b.kind === "gap" && a.shorter === b.shorter);
}

const span = (from: number, to: number): string =>
  from === to ? wholeMm(from) : `${wholeMm(from)}–${wholeMm(to)}`;
const drift = (from: number, to: number): string =>
  from === to ? wholeMm(from) : `${wholeMm(from)} to ${wholeMm(to)}`;

function entryOf(first: Read, last: Read): Entry {
  const reads = span(first.reading, last.reading);
  const [a, z] = [first.answer, last.answer];
  if (a.kind === "next") return { reads, next: wholeMm(a.length), dead: false, words: "" };
  if (a.kind === "below")
    return {
      reads: `to ${wholeMm(last.reading)}`,
      next: "",
      dead: true,
      words: `shortest is ${wholeMm(a.shortest)}`,
    };
  if (a.kind === "above")
    return {
      reads: `from ${wholeMm(first.reading)}`,
      next: "",
      dead: true,
      words: `longest is ${wholeMm(a.longest)}`,
    };
  if (z.kind !== "gap") throw new Error("A run of readings holds one kind of answer");
  const words = `${wholeMm(a.shorter)}: ${drift(a.short, z.short)} short; ${wholeMm(a.longer)}: ${drift(a.long, z.long)} long`;
  return { reads, next: "", dead: true, words };
}

/** The readings of one table as ladder rungs: neighbouring readings with the same answer are one rung. */
export function lengthEntries({ readings }: LengthTable): readonly Entry[] {
  const runs: [Read, Read][] = [];
  for (const read of readings) {
    const run = runs.at(-1);
    if (run && sameAnswer(run[1].answer, read.answer)) run[1] = read;
    else runs.push([read, read]);
  }
  return runs.map(([first, last]) => entryOf(first, last));
}
