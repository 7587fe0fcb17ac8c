import { around, overlaps } from "./box.ts";
import type { LabelCandidate } from "./label-candidate.ts";
import { labelsClash } from "./label-clash.ts";

/** Where each item's options begin when all stand in one row, and where the last ends. */
export function startsOf(options: readonly (readonly unknown[])[]): readonly number[] {
  let end = 0;
  return [0, ...options.map((mine) => (end += mine.length))];
}

/** For each label the others whose places may meet its own. */
export function rivalsAmong(
  options: readonly (readonly LabelCandidate[])[],
): readonly (readonly number[])[] {
  const reaches = options.map((mine) => around(mine.map(({ extent }) => extent)));
  return reaches.map((mine, item) =>
    [...reaches.keys()].filter((other) => {
      const theirs = reaches[other];
      return other !== item && theirs !== undefined && overlaps(mine, theirs);
    }),
  );
}

/** For a place of one label (its number among all) those of all others that cannot be used beside it (1), found out once for
 * each place that is asked for. */
export function labelBars(
  options: readonly (readonly LabelCandidate[])[],
  rivals: readonly (readonly number[])[],
): (place: number) => Uint8Array {
  const all = options.flat();
  const starts = startsOf(options);
  const items = options.flatMap((mine, item) => mine.map(() => item));
  const known: (Uint8Array | undefined)[] = Array.from({ length: all.length });
  const find = (place: number, mine: LabelCandidate): Uint8Array => {
    const bars = new Uint8Array(all.length);
    for (const other of rivals[items[place] ?? 0] ?? []) {
      let at = starts[other] ?? 0;
      for (const theirs of options[other] ?? []) {
        if (labelsClash(mine, theirs)) bars[at] = 1;
        at++;
      }
    }
    return bars;
  };
  return (place) => {
    const mine = all[place];
    if (mine === undefined) throw new Error(`No place ${place}`);
    const bars = known[place] ?? find(place, mine);
    known[place] = bars;
    return bars;
  };
}
