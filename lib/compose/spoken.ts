import type { Instrument, InstrumentKind } from "../model/instrument.ts";
import { nm } from "../model/measure.ts";

const nouns: Partial<Record<InstrumentKind, string>> = {
  drill: "drill",
  "plain-guide": "guide",
  "threaded-sleeve": "sleeve",
  "reduction-insert": "insert",
  "depth-gauge": "gauge",
  tap: "tap",
  countersink: "countersink",
  "driver-shaft": "driver",
  handle: "handle",
  "torque-limiter": "limiter",
};

/** An instrument as a noun and what is read beside it: the mark, or the torque of a limiter. */
export function nounAndNumber(instrument: Instrument): {
  readonly noun: string;
  readonly number: string;
} {
  const noun = nouns[instrument.kind];
  if (noun === undefined) return { noun: instrument.name, number: "" };
  if (instrument.kind === "torque-limiter") return { noun, number: `${nm(instrument.torque)} N·m` };
  return { noun, number: instrument.mark };
}

/** True for a drill or a guide of the gliding hole, which has a number in common with others. */
export function isGliding(instrument: Instrument): boolean {
  const { kind } = instrument;
  return (kind === "drill" || kind === "plain-guide") && instrument.use === "gliding";
}

/** An instrument as it is asked for aloud ("drill 2.7", "gliding drill 3.5", "limiter 1.6 N·m"). */
export function spoken(instrument: Instrument): string {
  const { noun, number } = nounAndNumber(instrument);
  return `${isGliding(instrument) ? "gliding " : ""}${noun} ${number}`.trimEnd();
}

/** What else tells the instrument apart at a glance, or nothing: ground rings, what a guide's end says. */
export function tellTale(instrument: Instrument, end?: string): string {
  if (instrument.kind === "drill" && instrument.bands !== undefined && instrument.bands > 0) {
    return instrument.bands === 1 ? "1 ring" : `${instrument.bands} rings`;
  }
  if (instrument.kind === "plain-guide" && end !== undefined && instrument.ends.length > 1)
    return `${end} end`;
  return "";
}

/** Words joined as in speech: "a, b and c". */
export function listed(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** The first letter made a capital. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The first letter made small, as in the middle of a sentence. */
export function uncapital(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
