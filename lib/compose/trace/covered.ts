const inNumber = /[\p{L}\p{N}]/u;

/** True when words stand on their own in a text: no letter, digit or decimal part runs on at either side. */
function standsAlone(text: string, from: number, to: number): boolean {
  const [before = "", after = "", next = ""] = [text[from - 1], text[to], text[to + 1]];
  const earlier = text[from - 2] ?? "";
  const runsIn = inNumber.test(before) || (/[.,]/.test(before) && /\d/.test(earlier));
  const runsOn = inNumber.test(after) || (/[.,]/.test(after) && /\d/.test(next));
  return !runsIn && !runsOn;
}

/** Printed texts whose numbers are covered bit by bit by what claims say. */
export type Cover = {
  /** Covers the words wherever they stand alone; words without a noun only as a whole text. True when that covers a number anew. */
  readonly cover: (words: string) => boolean;
  /** The texts that still hold a number nobody has claimed. */
  readonly untold: () => readonly string[];
};

/** Starts with nothing covered. Letter case is not looked at. */
export function coverOf(printed: readonly string[]): Cover {
  const texts = printed.map((text) => {
    const lower = text.toLowerCase();
    return { text, lower, open: [...lower].map((letter) => /\d/.test(letter)) };
  });
  const take = (open: boolean[], from: number, to: number): boolean => {
    let anew = false;
    for (let at = from; at < to; at += 1) {
      anew ||= open[at] === true;
      open[at] = false;
    }
    return anew;
  };
  return {
    cover: (words) => {
      const sought = words.replaceAll("\u00a0", " ").trim().toLowerCase();
      const isBare = !/\p{L}{2}/u.test(sought);
      let anew = false;
      for (const { lower, open } of texts) {
        if (isBare && lower !== sought) continue;
        for (let at = lower.indexOf(sought); at >= 0; at = lower.indexOf(sought, at + 1)) {
          const to = at + sought.length;
          if (standsAlone(lower, at, to)) anew = take(open, at, to) || anew;
        }
      }
      return anew;
    },
    untold: () => texts.filter(({ open }) => open.includes(true)).map(({ text }) => text),
  };
}
