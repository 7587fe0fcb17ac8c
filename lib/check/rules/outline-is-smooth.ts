import type { OutlineSegment, Point } from "../../model/laid-plate.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The least and the most of its run that a control point takes, in percent. */
const [least, most] = [25, 75] as const;
/** The widest turn at the end of a curve, as the sine of about 5 degrees. */
const turn = 0.09;

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
const long = (a: Point): number => Math.hypot(a[0], a[1]);
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];

type Leg = { readonly from: Point; readonly to: Point; readonly curve?: readonly [Point, Point] };
const legOf = (from: Point, segment: OutlineSegment): Leg =>
  "line" in segment
    ? { from, to: segment.line }
    : { from, to: segment.curve[2], curve: [segment.curve[0], segment.curve[1]] };

/** How far along its own direction a control point stands, in percent of the whole run that way. */
const share = (start: Point, control: Point, goal: Point): number => {
  const arm = minus(control, start);
  const run = dot(minus(goal, start), arm) / Math.max(1, long(arm));
  return run <= 0 ? 1000 : (long(arm) * 100) / run;
};
const arrives = ({ from, to, curve }: Leg): Point => minus(to, curve?.[1] ?? from);
const leaves = ({ from, to, curve }: Leg): Point => minus(curve?.[0] ?? to, from);

/** What is wrong at each node, by its index among the legs. */
function* faults(legs: readonly Leg[]): Generator<readonly [index: number, message: string]> {
  for (const [index, leg] of legs.entries()) {
    const { from, to, curve } = leg;
    const shares = curve ? [share(from, curve[0], to), share(to, curve[1], from)] : [];
    if (shares.some((one) => one < least || one > most))
      yield [index, "control points a quarter to three quarters along the way to the other end"];
    const next = legs[(index + 1) % legs.length];
    if (!next || (!curve && !next.curve)) continue;
    const [a, b] = [arrives(leg), leaves(next)];
    if (dot(a, b) <= 0 || Math.abs(cross(a, b)) > turn * long(a) * long(b))
      yield [index, "a curve that runs on without a corner"];
  }
}

/** A plate's outline has no kink and no bulge. */
export const outlineIsSmooth: Rule = {
  id: "outline-is-smooth",
  severity: "stop",
  about: "plate",
  summary:
    "Curves of an outline run on without a corner (within 5 degrees), and their control points lie a quarter to three quarters along their run.",
  why: "The edge of a plate is milled in one sweep. A slip in one coordinate shows as a kink or a bulge, and the map is no longer the plate's.",
  fix: "Compare the node and its control points with the drawing.",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const { plate, outline, holesInRow, name } of derived.plates) {
      const facts = catalogue.plates.get(plate);
      if (!facts || "mirror_of" in facts || facts.variants[0]?.holes !== holesInRow) continue;
      let from = outline.start;
      const legs = outline.segments.map((segment) => {
        const leg = legOf(from, segment);
        from = leg.to;
        return leg;
      });
      for (const [index, message] of faults(legs))
        yield {
          file: facts.file,
          path: ["outline", (index + 1) % legs.length],
          message: `Expected ${message} at node ${((index + 1) % legs.length) + 1} of ${name}`,
        };
    }
  },
  examples: [
    passes("straight edges", "Four corners, no curve."),
    passes(
      "a rounded corner",
      "From 6 to 2 along and from 0 to 4 up, control points about half way.",
      {
        "plate/lower-fibula-left outline": [
          {
            at: [4, -6],
            curve: [
              [0, -3],
              [2, -6],
            ],
          },
          { from: "end", at: [0, -6] },
          { from: "end", at: [0, 6] },
          { at: [0, 6] },
          { at: [0, 0] },
        ],
      },
    ),
    fails("a control point that slipped a digit", "0.3 where 3 was meant.", {
      "plate/lower-fibula-left outline": [
        {
          at: [4, -6],
          curve: [
            [0, -0.3],
            [2, -6],
          ],
        },
        { from: "end", at: [0, -6] },
        { from: "end", at: [0, 6] },
        { at: [0, 6] },
        { at: [0, 0] },
      ],
    }),
    fails("a kink", "The curve arrives steeply and the edge leaves level.", {
      "plate/lower-fibula-left outline": [
        {
          at: [4, -6],
          curve: [
            [0, -3],
            [2, -3],
          ],
        },
        { from: "end", at: [0, -6] },
        { from: "end", at: [0, 6] },
        { at: [0, 6] },
        { at: [0, 0] },
      ],
    }),
  ],
};
