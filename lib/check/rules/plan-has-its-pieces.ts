import { type Catalogue, known } from "../../model/catalogue.ts";
import { type Um, wholeMm } from "../../model/measure.ts";
import { piecesWithin } from "../../model/rack-pieces.ts";
import type { Rule } from "../../model/rule.ts";
import type { Case, Site } from "../../model/site.ts";
import { fails, passes } from "../example.ts";

type Range = readonly [Um, Um];

/** Pieces of a screw in these lengths in the trays of a site, lengths seen empty left out; undefined where no tray there holds the screw. */
function piecesAt(
  { trays, screws }: Catalogue,
  site: Site,
  screw: string,
  range: Range,
): number | undefined {
  const racks = site.trays.flatMap(({ tray, empty_lengths }) =>
    known(trays, tray).slots.flatMap((slot) => {
      if (slot.holds !== "rack" || slot.screw !== screw) return [];
      const empty = empty_lengths.flatMap((one) => (one.screw === screw ? [one.length] : []));
      return [piecesWithin(known(screws, screw), slot, [range], empty)];
    }),
  );
  return racks.length === 0 ? undefined : racks.reduce((sum, pieces) => sum + pieces, 0);
}

/** Every span from the start of one planned range to the end of another, the narrowest first. */
function spans(ranges: readonly Range[]): readonly Range[] {
  return ranges
    .flatMap(([from]) => ranges.map(([, to]): Range => [from, to]))
    .filter(([from, to]) => from <= to)
    .sort(([a, b], [c, d]) => b - a - (d - c) || a - c);
}

/** The first span of lengths in which a case plans more of a screw than lie at its site. */
function shortage(catalogue: Catalogue, { plan, site }: Case, screw: string) {
  const ranges = plan.flatMap((one) => (one.screw === screw && one.lengths ? [one.lengths] : []));
  return spans(ranges)
    .map((span) => ({
      span,
      planned: ranges.filter(([from, to]) => from >= span[0] && to <= span[1]).length,
      there: piecesAt(catalogue, known(catalogue.sites, site), screw, span),
    }))
    .find(({ planned, there }) => there !== undefined && planned > there);
}

/** The racks of a site hold a screw for every hole of a plan, in the lengths planned for it. */
export const planHasItsPieces: Rule = {
  id: "plan-has-its-pieces",
  severity: "sign",
  about: "case",
  summary:
    "For every span of lengths the racks of a site hold at least as many pieces of a screw as a case plans holes within that span; lengths that were seen empty hold none.",
  why: "Each hole takes a screw of its own. The last one is missed with its hole drilled.",
  fix: "Bring a second rack or refill the lengths, then correct the site's file; or change the plan.",
  source: "common practice",
  *check({ catalogue }) {
    for (const planned of catalogue.cases.values())
      for (const screw of new Set(planned.plan.map((one) => one.screw))) {
        const short = shortage(catalogue, planned, screw);
        if (short === undefined) continue;
        const [from, to] = short.span;
        yield {
          file: planned.file,
          path: ["plan", planned.plan.findIndex((one) => one.screw === screw), "screw"],
          message: `Expected at least ${short.planned} pieces of ${known(catalogue.screws, screw).called} in lengths ${wholeMm(from)} to ${wholeMm(to)} at ${known(catalogue.sites, planned.site).name}, got ${short.there}`,
        };
      }
  },
  examples: [
    passes("a piece for the hole", "One hole, lengths 16 to 18; the rack holds pieces of both.", {
      "case/case-a plan.0.lengths": [16, 18],
    }),
    passes("as many as there are holes", "One hole, length 16; the rack holds 1 piece of it.", {
      "case/case-a plan.0.lengths": [16, 16],
      "tray/small slots.20.except": [{ length: 16, quantity: 1 }],
    }),
    fails("fewer than holes", "Two holes, length 16; the rack holds 1 piece of it.", {
      "case/case-a plan.0.lengths": [16, 16],
      "case/case-a plan.1": {
        hole: "S2",
        zone: "oblong-35",
        screw: "cortical-35",
        recipe: "cortical-neutral",
        order: 2,
        lengths: [16, 16],
      },
      "tray/small slots.20.except": [{ length: 16, quantity: 1 }],
    }),
    fails("a length seen empty", "One hole, length 16; that length was seen empty.", {
      "case/case-a plan.0.lengths": [16, 16],
      "site/brackenhollow trays.0.empty_lengths": [{ screw: "cortical-35", length: 16 }],
    }),
  ],
};
