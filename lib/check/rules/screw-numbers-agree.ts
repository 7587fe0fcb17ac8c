import type { Defined } from "../../model/definition.ts";
import { mm, type Um } from "../../model/measure.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import type { Screw } from "../../model/screw.ts";
import { fails, passes } from "../example.ts";
import { rackSpan } from "../rack-span.ts";

type Bound = readonly [path: readonly string[], what: string, least: Um, got: Um, most: Um];

/** What each number of a screw must lie between, given its thread, micrometres. */
function bounds({ major, core, pitch, shaft, head, thread, lengths }: Screw): readonly Bound[] {
  const part = (percent: number): Um => Math.round((major * percent) / 100);
  return [
    [["core"], "core", part(40), core, part(90)],
    [["pitch"], "pitch", part(25), pitch, part(50)],
    [["head", "diameter"], "head", part(115), head.diameter, part(220)],
    [["head", "height"], "head height", part(40), head.height, part(110)],
    ...(shaft === undefined ? [] : [[["shaft"], "shaft", core, shaft, major] as const]),
    ...(thread.extent === "full"
      ? []
      : [
          [
            ["thread", "length"],
            "threaded length",
            part(200),
            thread.length,
            rackSpan({ lengths }).shortest,
          ] as const,
        ]),
  ];
}

function* outside(screw: Defined<Screw>, across: Um | undefined): Generator<Breach> {
  const drive: readonly Bound[] =
    across === undefined
      ? []
      : [
          [
            ["drive"],
            "drive",
            Math.round(screw.head.diameter * 0.35),
            across,
            Math.round(screw.head.diameter * 0.85),
          ],
        ];
  for (const [path, what, least, got, most] of [...bounds(screw), ...drive])
    if (got < least || got > most)
      yield {
        file: screw.file,
        path,
        message: `Expected a ${what} of ${mm(least)} to ${mm(most)} for ${screw.called}, got ${mm(got)}`,
      };
}

/** The numbers of one screw agree with its outer diameter. */
export const screwNumbersAgree: Rule = {
  id: "screw-numbers-agree",
  severity: "sign",
  about: "screw",
  summary:
    "Core, pitch, shaft, head, drive and threaded length of a screw lie in proportion to its thread: core 40 to 90 %, pitch 25 to 50 %, head 115 to 220 % of it.",
  why: "A slip of a digit or of a unit in one number leaves it out of proportion to the others.",
  fix: "Compare the number with the drawing.",
  source:
    "common practice; nominal screws of 1.5 to 6.5 after ISO 5835:1991, from memory, lie well inside",
  *check({ catalogue }) {
    for (const screw of catalogue.screws.values())
      yield* outside(screw, catalogue.interfaces.drives[screw.drive]?.across);
  },
  examples: [
    passes("in proportion", "Cortical 3.5: core 2.4 (69 %), pitch 1.25 (36 %), head 6.0 (171 %)."),
    passes("a core at 40 %", "Cortical 3.5 with core 1.4.", { "screw/cortical-35 core": 1.4 }),
    fails("a core under 40 %", "Cortical 3.5 with core 1.399.", {
      "screw/cortical-35 core": 1.399,
    }),
    passes("a core at 90 %", "Cortical 3.5 with core 3.15.", { "screw/cortical-35 core": 3.15 }),
    fails("a core over 90 %", "Cortical 3.5 with core 3.151.", { "screw/cortical-35 core": 3.151 }),
    fails("a pitch ten times too small", "Cortical 3.5 with pitch 0.3 (9 %).", {
      "screw/cortical-35 pitch": 0.3,
    }),
    passes("a pitch at half the thread", "Cortical 3.5 with pitch 1.75.", {
      "screw/cortical-35 pitch": 1.75,
    }),
    fails("a pitch over half the thread", "Cortical 3.5 with pitch 1.751.", {
      "screw/cortical-35 pitch": 1.751,
    }),
    fails("a head hardly wider than the thread", "Cortical 3.5 with a head of 4.0 (114 %).", {
      "screw/cortical-35 head.diameter": 4,
    }),
    fails("a head over twice the thread", "Cortical 3.5 with a head of 8.0 (229 %).", {
      "screw/cortical-35 head.diameter": 8,
    }),
    fails("a shaft wider than the thread", "Cortical 3.5 with a shaft of 3.6.", {
      "screw/cortical-35 shaft": 3.6,
    }),
    fails("more thread than screw", "Threaded for 12; the shortest screw is 10.", {
      "screw/cortical-35 thread": { extent: "partial", length: 12 },
      "screw/cortical-35 gliding": undefined,
    }),
    fails("a drive as wide as the head", "Hexalobular 20 across 5.5 in a head of 6.0.", {
      "interfaces/interfaces drives.hexalobular-20.across": 5.5,
    }),
  ],
};
