import { describe, expect, test } from "vitest";
import { caseSheets } from "../../lib/compose/case-sheet.ts";
import type { CaseView, StepView } from "../../lib/model/sheet.ts";
import { demo, demoSheets } from "../fixtures/demo-library.ts";

const sheets = demoSheets();
const caseOn = (today: string, code: string): CaseView => {
  const cases = [...demo.catalogue.cases.keys()];
  const made = cases.flatMap((id) => caseSheets({ ...demo, today }, id));
  const found = made.find((sheet) => sheet.code === code);
  if (found === undefined) throw new Error(`No ${code}`);
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

  test("says of each part how many the plan takes, and how many lie there where that is known", () => {
    const { pull } = caseOn("2026-10-07", "CASE-A");
    const pieces = new Map(pull.map((line) => [line.what, line.pieces]));
    expect(pieces.get("Lower fibula plate, LEFT, 5 holes")).toBe("1 of 1");
    expect(pieces.get("Screw 3.5 cortical, 14–20")).toBe("2 of 16");
    expect(pieces.get("Screw 2.7 locking, 12–20")).toBe("4 of 20");
    expect(pieces.get("drill 2.5")).toBe("1 of 2");
    expect(pieces.get("sleeve 3.5")).toBe("1 of 0");
    expect(pieces.get("limiter 0.9 N·m")).toBe("1");
  });

  test("carries the cautions of the order of work that it names", () => {
    const words = caseOn("2026-10-07", "CASE-B").cautions.map(({ text }) => text);
    expect(words).toContain("Hooks checked before any screw.");
  });
});

describe("a step that may be left out", () => {
  const tapOf = (id: string) => {
    const card = sheets.find((sheet) => sheet.id === id);
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
  const cards = sheets.flatMap((sheet) =>
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

describe("an order of work", () => {
  const stepsOf = (id: string): StepView["steps"] => {
    const card = sheets.find((sheet) => sheet.id === id);
    return card?.kind === "steps" ? card.steps : [];
  };
  const spaced = (words = ""): string => words.replaceAll("\u00a0", " ");

  test("calls a screw out with its technique", () => {
    expect(stepsOf("pebblefin-procedure-hook-plate").map(({ inHand }) => spaced(inHand))).toEqual([
      ...["", "", ""],
      "Screw 3.5 cortical, offset, for compression",
      "Screw 2.7 cortical, as lag screw",
      "Screw 3.5 cortical",
      ...["", ""],
    ]);
  });

  test("names driver and limiter of every size that its last pass tightens again", () => {
    const last = (id: string) =>
      spaced(stepsOf(id).find(({ verb }) => verb === "Tighten all again")?.handedWith);
    expect(last("pebblefin-procedure-lower-fibula-locking")).toBe(
      "Screw 2.7 locking: driver 10, limiter 0.9 N·m; Screw 3.5 locking: driver 20, limiter 1.6 N·m",
    );
    expect(last("gatepost-procedure-upper-shin-locking")).toBe(
      "Screw 5.0 locking: driver 30, limiter 3.8 N·m",
    );
  });
});
