import type { SiteDrawings } from "../model/site-drawings.ts";
import { isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { deadReadings } from "./dead-readings.ts";
import { sectionViews } from "./section-views.ts";

const cut = { width: 110, height: 56, letter: 4 };

/** The drawings that only the site's pages show, keyed by what they show. */
export function siteDrawings(composing: Composing): SiteDrawings {
  const { catalogue, derived } = composing;
  return {
    chains: new Map(
      derived.chains.map((chain, index) => {
        const views = isLag(chain) ? (["lag-holes", "lag-seated"] as const) : (["seated"] as const);
        const wanted = views.map((view) => [chain, view] as const);
        const made = sectionViews(composing, `chain${index + 1}`, wanted, cut);
        return [chain.id, made.map(({ figure }) => figure)];
      }),
    ),
    screws: new Map(
      [...catalogue.screws.keys()].map((id) => [id, deadReadings(composing, "site", [id], cut)]),
    ),
  };
}
