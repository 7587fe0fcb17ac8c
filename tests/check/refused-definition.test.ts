import { expect, test } from "vitest";
import { check } from "../../lib/check/check.ts";
import { waits } from "../../lib/check/waits.ts";
import { derive } from "../../lib/derive/derive.ts";
import type { Finding } from "../../lib/model/finding.ts";
import type { SourceFile } from "../../lib/model/source-file.ts";
import { readLibrary } from "../../lib/read/read-library.ts";
import { resolve } from "../../lib/resolve/resolve.ts";
import { validate } from "../../lib/validate/validate.ts";
import { runs } from "../fixtures/runs.ts";

const { sources } = readLibrary("content");
const today = "2026-11-25";

/** All that is said of a library, a line a finding. */
function said(read: readonly SourceFile[]): string[] {
  const { definitions, findings } = validate(read);
  const joined = resolve(definitions);
  const { catalogue, incomplete, unread } = joined;
  const judged: Finding[] = catalogue
    ? check({ catalogue, derived: derive(catalogue), today, unread }).filter(
        ({ place }) => !incomplete.has(place.file),
      )
    : [];
  return [...findings, ...joined.findings, ...judged].map(
    ({ place, rule, message }) => `${place.file} ${rule}: ${message}`,
  );
}

const whole = new Set(said(sources));
const thirds = sources.filter((_, index) => index % 3 === 0);
const step = Math.round(thirds.length / runs(thirds.length));
const sampled = thirds.filter((_, index) => index % step === 0);

test.each(sampled)("nothing else is said because $file cannot be read", ({ file }) => {
  const broken = sources.map((source) =>
    source.file === file ? { ...source, data: undefined, refused: true } : source,
  );
  expect(said(broken).filter((line) => !whole.has(line))).toEqual([]);
});

test.each([
  ["one of the kind it needs", { needsAll: ["tray"] }, "systems/a/trays/x.yaml", "tray", true],
  ["one of another kind", { needsAll: ["zone"] }, "systems/a/trays/x.yaml", "tray", false],
  ["one of another system", { needsAll: ["tray"] }, "systems/b/trays/x.yaml", "tray", false],
  ["one of some system, for a case", { needsAll: ["tray"] }, "cases/x.yaml", "tray", true],
  ["none, when it needs none", {}, "systems/a/trays/x.yaml", "tray", false],
] as const)("a rule waits for %s that is unread", (_, rule, file, kind, expected) => {
  expect(waits(rule, [{ kind, system: "a" }], { file })).toBe(expected);
});

test("a rule about drills waits for a drill or for an instrument of unknown kind, not for forceps", () => {
  const waitsFor = (sort?: string): boolean =>
    waits({ needsAll: ["drill"] }, [
      { kind: "instrument", system: "a", ...(sort === undefined ? {} : { sort }) },
    ]);
  expect([waitsFor("drill"), waitsFor(), waitsFor("forceps")]).toEqual([true, true, false]);
});
