import type { SheetView } from "../../model/sheet.ts";
import type { Claim, Fact, Trace } from "../../model/trace.ts";
import { grouped } from "../grouped.ts";
import { coverOf } from "./covered.ts";
import { derivedClaims } from "./derived-claims.ts";
import { phrasesOf } from "./phrases-of.ts";
import { printedTexts } from "./printed-texts.ts";
import { factKey, factOf, type Traced, usesOf } from "./uses-of.ts";

/** Every part of the library that a warning may name although the sheet is not about it: the sheet's own system first. */
function neighbours(traced: Traced, system: string): readonly Fact[] {
  const { screws, instruments, zones, plates } = traced.catalogue;
  const all = (
    [
      ["screw", screws],
      ["instrument", instruments],
      ["zone", zones],
      ["plate", plates],
    ] as const
  ).flatMap(([kind, map]) => [...map.values()].map((one) => ({ kind, one })));
  const near = all.filter(({ one }) => one.system === system);
  return [...near, ...all.filter(({ one }) => one.system !== system)].map(({ kind, one }) =>
    factOf(traced, kind, one.id),
  );
}

type Said = (definition: Fact) => readonly Claim[];

/** What each definition says by itself, one claim a field; worked out once for all sheets. */
function sayings({ catalogue }: Traced): Said {
  const kept = new Map<string, readonly Claim[]>();
  return (definition) => {
    const key = factKey(definition);
    const claims =
      kept.get(key) ??
      phrasesOf(catalogue, definition).map(({ what, words, path }) => ({
        what: `${definition.id}: ${what}`,
        words,
        facts: [{ ...definition, path }],
      }));
    kept.set(key, claims);
    return claims;
  };
}

/** Of the claims offered, those that say a number which no longer claim has said; longer words first, equal words together. */
function made(claims: readonly Claim[], cover: ReturnType<typeof coverOf>): readonly Claim[] {
  const offered = grouped(
    claims.flatMap((claim) => claim.words.map((words) => ({ words, claim }))),
    ({ words }) => words,
  );
  const printed = new Map<Claim, string[]>();
  const longestFirst = [...offered].sort(([a], [b]) => b.length - a.length || (a < b ? -1 : 1));
  for (const [words, same] of longestFirst) {
    if (!cover.cover(words)) continue;
    for (const { claim } of same) printed.set(claim, [...(printed.get(claim) ?? []), words]);
  }
  return claims.flatMap((claim) => {
    const words = printed.get(claim);
    return words
      ? [{ ...claim, words: [...new Set(claim.words)].filter((word) => words.includes(word)) }]
      : [];
  });
}

function traceOf(traced: Traced, said: Said, sheets: readonly [SheetView, ...SheetView[]]): Trace {
  const [sheet] = sheets;
  const uses = usesOf(traced, sheet);
  const cover = coverOf([...new Set(sheets.flatMap(printedTexts))]);
  const followed = sheets.flatMap((one) => derivedClaims(traced, one));
  const distinct = new Map(followed.map((claim) => [JSON.stringify(claim), claim]));
  const used = new Set(uses.map(factKey));
  const others = neighbours(traced, sheet.system).filter((fact) => !used.has(factKey(fact)));
  const whole = uses.filter(({ path }) => path.length === 0);
  const own = made([...distinct.values(), ...whole.flatMap(said)], cover);
  const claims = [...own, ...made(others.flatMap(said), cover)];
  const all = new Map(
    [...uses, ...claims.flatMap(({ facts }) => facts.map((fact) => ({ ...fact, path: [] })))].map(
      (fact) => [factKey(fact), fact],
    ),
  );
  return {
    sheet: sheet.id,
    card: sheet.identity.card,
    uses: [...all.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, fact]) => fact),
    claims,
    untold: cover.untold(),
  };
}

/** What each sheet rests on, by sheet id, its papers taken together. */
export function traceSheets(
  traced: Traced,
  sheets: readonly SheetView[],
): ReadonlyMap<string, Trace> {
  const said = sayings(traced);
  return new Map(
    [...grouped(sheets, ({ id }) => id)].map(([id, same]) => [id, traceOf(traced, said, same)]),
  );
}
