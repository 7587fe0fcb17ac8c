import type { Rule } from "../../model/rule.ts";
import type { SheetView } from "../../model/sheet.ts";
import {
  sampleCautions,
  samplePairing,
  samplePairingRow,
  sampleStep,
  sampleSteps,
} from "../sample-sheets.ts";

/** The most of each thing that a sheet can carry and still be read at a glance. */
const limits = {
  rows: 12,
  "words in a cell": 7,
  "cautions at one step": 5,
  "cautions on a sheet": 9,
  "words of prose in one paragraph": 90,
} as const;

const words = (...texts: readonly string[]): number =>
  texts
    .join(" ")
    .split(/\s+/)
    .filter((word) => word !== "").length;
const most = (counts: readonly number[]): number => Math.max(0, ...counts);

function amounts(sheet: SheetView): Readonly<Record<keyof typeof limits, number>> {
  const steps = sheet.kind === "steps" ? sheet.steps : [];
  const rows = sheet.kind === "pairing" ? sheet.rows : [];
  const planned = sheet.kind === "case" || sheet.kind === "mishaps" ? sheet.rows : [];
  return {
    rows: rows.length + steps.length + planned.length,
    "words in a cell": most(
      rows.flatMap(({ cells }) => cells.map(({ noun, number, note }) => words(noun, number, note))),
    ),
    "cautions at one step": most(steps.map(({ cautions }) => cautions.length)),
    "cautions on a sheet": new Set(
      [...sheet.cautions, ...steps.flatMap(({ cautions }) => cautions)].map(({ id }) => id),
    ).size,
    "words of prose in one paragraph": most(
      [sheet.lead, ...steps.map(({ say }) => say)].map((text) => words(text)),
    ),
  };
}

/** A sheet holds no more than can be taken in at a glance, and fits its page as measured in print. */
export const sheetFitsOnePage: Rule = {
  id: "sheet-fits-one-page",
  severity: "stop",
  about: "sheet",
  summary:
    "A sheet fits one page: at most 12 rows or steps, 7 words a cell, 5 cautions at a step, 9 on the sheet, 90 words in a paragraph, and nothing over the edge.",
  why: "A card that is too full is not looked at; what is clipped is not there.",
  fix: "Split the technique, the procedure or the system's sheet in two; nothing is shrunk to fit.",
  source:
    "common practice; letter sizes after FAA and NUREG-0700 leave about 12 rows on A4 at 80 cm",
  *check({ sheets = [], fits = [] }) {
    const origins = new Map(sheets.map((sheet) => [sheet.id, sheet.origin]));
    for (const sheet of sheets) {
      for (const [what, amount] of Object.entries(amounts(sheet))) {
        const limit = limits[what as keyof typeof limits];
        if (amount > limit)
          yield {
            file: sheet.origin,
            path: [],
            message: `Too many ${what} on ${sheet.id}: ${amount}, at most ${limit}`,
          };
      }
    }
    for (const { sheet, pages, overflow, missing } of fits) {
      const file = origins.get(sheet.replace(/\.[^.]*$/, "")) ?? origins.get(sheet) ?? sheet;
      if (pages !== 1)
        yield { file, path: [], message: `Expected ${sheet} on one page, got ${pages}` };
      for (const { what, by, rows } of overflow)
        yield {
          file,
          path: [],
          message: `Expected ${what} inside the page of ${sheet}, got ${by} mm over${
            rows
              ? `, set as close as may be: ${rows.fit} of ${rows.of} rows fit, ${rows.over.map((row) => `"${row}"`).join(", ")} do not`
              : ""
          }`,
          ...(rows
            ? {
                fix: `Put at most ${rows.fit} rows on this sheet and the others on one of their own; nothing is shrunk to fit.`,
              }
            : {}),
        };
      for (const what of missing)
        yield { file, path: [], message: `Missing in print of ${sheet}: ${what}` };
    }
  },
  examples: [
    {
      title: "twelve rows",
      passes: true,
      shows: "12 rows on one sheet.",
      edits: [],
      sheets: [samplePairing(12)],
    },
    {
      title: "thirteen rows",
      passes: false,
      shows: "13 rows: split the sheet.",
      edits: [],
      sheets: [samplePairing(13)],
    },
    {
      title: "twelve steps",
      passes: true,
      shows: "12 steps on one card.",
      edits: [],
      sheets: [sampleSteps({ steps: Array.from({ length: 12 }, () => sampleStep) })],
    },
    {
      title: "thirteen steps",
      passes: false,
      shows: "13 steps: split the card.",
      edits: [],
      sheets: [sampleSteps({ steps: Array.from({ length: 13 }, () => sampleStep) })],
    },
    {
      title: "five cautions at one step",
      passes: true,
      shows: "5 cautions at one step.",
      edits: [],
      sheets: [sampleSteps({ steps: [{ ...sampleStep, cautions: sampleCautions(5) }] })],
    },
    {
      title: "six cautions at one step",
      passes: false,
      shows: "6 cautions at one step: nobody reads six.",
      edits: [],
      sheets: [sampleSteps({ steps: [{ ...sampleStep, cautions: sampleCautions(6) }] })],
    },
    {
      title: "nine cautions on a sheet",
      passes: true,
      shows: "9 cautions on one sheet.",
      edits: [],
      sheets: [sampleSteps({ cautions: sampleCautions(9) })],
    },
    {
      title: "ten cautions on a sheet",
      passes: false,
      shows: "10 cautions on one sheet.",
      edits: [],
      sheets: [sampleSteps({ cautions: sampleCautions(10) })],
    },
    {
      title: "seven words in a cell",
      passes: true,
      shows: "Drill 2.7 with a note of five words.",
      edits: [],
      sheets: [
        samplePairing(1, {
          rows: [
            {
              ...samplePairingRow,
              cells: [
                { role: "drill", noun: "drill", number: "2.7", note: "one two three four five" },
              ],
            },
          ],
        }),
      ],
    },
    {
      title: "eight words in a cell",
      passes: false,
      shows: "Drill 2.7 with a note of six words.",
      edits: [],
      sheets: [
        samplePairing(1, {
          rows: [
            {
              ...samplePairingRow,
              cells: [
                {
                  role: "drill",
                  noun: "drill",
                  number: "2.7",
                  note: "one two three four five six",
                },
              ],
            },
          ],
        }),
      ],
    },
    {
      title: "ninety words in a paragraph",
      passes: true,
      shows: "A step of 90 words.",
      edits: [],
      sheets: [sampleSteps({ steps: [{ ...sampleStep, say: "word ".repeat(90) }] })],
    },
    {
      title: "ninety-one words in a paragraph",
      passes: false,
      shows: "A step of 91 words.",
      edits: [],
      sheets: [sampleSteps({ steps: [{ ...sampleStep, say: "word ".repeat(91) }] })],
    },
    {
      title: "a second page in print",
      passes: false,
      shows: "2 pages.",
      edits: [],
      sheets: [sampleSteps()],
      fits: [{ sheet: "sample", pages: 2, overflow: [], missing: [] }],
    },
    {
      title: "a box over the edge",
      passes: false,
      shows: "The caution box stands 3.2 mm over the edge.",
      edits: [],
      sheets: [sampleSteps()],
      fits: [
        {
          sheet: "sample",
          pages: 1,
          overflow: [{ what: "the caution box", by: 3.2 }],
          missing: [],
        },
      ],
    },
    {
      title: "two rows too many",
      passes: false,
      shows: "The last two of eleven rows stand 14.6 mm over.",
      edits: [],
      sheets: [sampleSteps()],
      fits: [
        {
          sheet: "sample",
          pages: 1,
          overflow: [
            {
              what: "main",
              by: 14.6,
              rows: { of: 11, fit: 9, over: ["Screw 2.7 locking", "Screw 2.7 cortical"] },
            },
          ],
          missing: [],
        },
      ],
    },
  ],
};
