import { describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import { derive } from "../../lib/derive/derive.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { loadLibrary } from "../../lib/index.ts";
import type { CaseView, SheetView, StepView } from "../../lib/model/sheet.ts";

const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const derived = derive(catalogue);
const composed = new Map<string, readonly SheetView[]>();
const sheetsOn = (today: string): readonly SheetView[] => {
  const sheets = composed.get(today) ?? compose({ catalogue, derived, pictures, today });
  composed.set(today, sheets);
  return sheets;
};
const caseOn = (today: string, code: string): CaseView => {
  const found = sheetsOn(today).find((sheet) => sheet.kind === "case" && sheet.code === code);
  if (found?.kind !== "case") throw new Error(`No ${code}`);
  return found;
};

describe("a case sheet", () => {
  test("says when it expires until that day, and then that it is not to be used", () => {
    const last = caseOn("2026-10-07", "CASE-A");
    expect(last.expires).toBe("Expires 2026-10-07. Destroy after the case.");
    expect(last.lead).toContain("The surgeon decides");
    const after = caseOn("2026-10-08", "CASE-A");
    expect(after.expires).toBe("Expired on 2026-10-07: do not use. Destroy this sheet.");
    expect(after.lead).toBe("Expired on 2026-10-07: do not use.");
  });

  test("says which instruments are exchanged between rows: none before the first, and no guide that is only turned round", () => {
    expect(
      caseOn("2026-10-07", "CASE-A").rows.map(({ hand }) => /^Change [^:]*/.exec(hand)?.[0]),
    ).toEqual([
      undefined,
      undefined,
      "Change drill, sleeve, driver and limiter",
      "Change drill, sleeve, driver and limiter",
    ]);
  });

  test("carries the cautions of the order of work that it names", () => {
    const words = caseOn("2026-10-07", "CASE-B").cautions.map(({ text }) => text);
    expect(words).toContain("Hooks checked before any screw.");
  });
});

describe("a step that may be left out", () => {
  const tapOf = (id: string) => {
    const card = sheetsOn("2026-10-07").find((sheet) => sheet.id === id);
    return (card as StepView).steps.find(({ verb }) => verb === "Tap")?.skip;
  };

  test("says of a tap who asks for it, and by the screw whether it is the rule", () => {
    expect(tapOf("pebblefin-steps-neutral-cortical-35")).toBe(
      "Only if the surgeon asks: the screw cuts its own thread.",
    );
    expect(tapOf("gatepost-steps-neutral-cortical-45")).toBe(
      "Left out only if the surgeon says so.",
    );
  });
});

describe("a caution on the card of a technique", () => {
  const cards = sheetsOn("2026-10-07").flatMap((sheet) =>
    sheet.kind === "steps" && sheet.id.includes("-steps-") ? [sheet] : [],
  );
  const idsOf = (views: StepView["cautions"]) => views.map(({ id }) => id);

  test("stands at its step, and only what concerns every step at the foot", () => {
    expect(cards.length).toBeGreaterThan(20);
    const everywhere = new Set(["check-number-on-metal", "card-not-sterile"]);
    for (const { id, cautions } of cards)
      expect([id, idsOf(cautions).filter((one) => !everywhere.has(one))]).toEqual([id, []]);
  });

  test("against a blunt drill stands where a pilot hole is drilled, against a misheard length where one is read", () => {
    for (const { id, steps } of cards) {
      const at = (caution: string) =>
        steps.flatMap(({ verb, cautions }) => (idsOf(cautions).includes(caution) ? [verb] : []));
      const reads = steps.some(({ verb }) => verb === "Read the marks");
      expect([id, at("drill-sharp-and-straight")]).toEqual([id, ["Drill the pilot hole"]]);
      expect([id, at("read-length-back")]).toEqual([
        id,
        reads ? ["Read the marks", "Measure"] : ["Measure"],
      ]);
    }
  });
});
