import type { Figure } from "../model/figure.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import { seenOn } from "../model/look-alike.ts";
import type { SheetView } from "../model/sheet.ts";
import { signNames } from "../model/signs.ts";
import type { SiteDrawings } from "../model/site-drawings.ts";
import { visions } from "../model/vision.ts";
import type { OpeningKind } from "../model/zone.ts";
import { backTables } from "./back-tables.ts";
import { isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { deadReadings } from "./dead-readings.ts";
import { gallery } from "./gallery.ts";
import { openingWords } from "./hole-symbols.ts";
import { plateSide } from "./plate-facts.ts";
import { sectionViews } from "./section-views.ts";

const cut = { width: 110, height: 56, letter: 4 };
const [sideWidth, pairWidth] = [190, 100];

function chainCuts(composing: Composing): SiteDrawings["chains"] {
  return new Map(
    composing.derived.chains.map((chain, index) => {
      const views = isLag(chain) ? (["lag-holes", "lag-seated"] as const) : (["seated"] as const);
      const wanted = views.map((view) => [chain, view] as const);
      const made = sectionViews(composing, `chain${index + 1}`, wanted, cut);
      return [chain.id, made.map(({ figure }) => figure)];
    }),
  );
}

const longest = (laid: readonly LaidPlate[]): LaidPlate | undefined =>
  laid.toSorted((a, b) => a.holesInRow - b.holesInRow).at(-1);

function plateSides({ catalogue, derived, pictures }: Composing): SiteDrawings["plates"] {
  return new Map(
    [...catalogue.plates.keys()].flatMap((id): [string, Figure][] => {
      const laid = longest(derived.plates.filter(({ plate }) => plate === id));
      if (laid === undefined) return [];
      const side = plateSide(catalogue, id);
      return [[id, pictures.plateSide(`side-${id}`, laid, side, sideWidth)]];
    }),
  );
}

function alikePairs({ catalogue, derived, pictures }: Composing): SiteDrawings["alike"] {
  const pairs = derived.lookAlikes.flatMap((pair, index) => {
    const { a, b } = pair;
    const [one, other] = [catalogue.instruments.get(a), catalogue.instruments.get(b)];
    if (one === undefined || other === undefined) return [];
    const { interfaces } = catalogue;
    const figure = pictures.alikePair(`alike${index + 1}`, [one, other], interfaces, pairWidth);
    const facts = [
      [one.name, seenOn(pair, a)],
      [other.name, seenOn(pair, b)],
    ] as const;
    return [{ a, b, figure: { ...figure, facts } }];
  });
  const ids = new Set(pairs.flatMap(({ a, b }) => [a, b]));
  return new Map(
    [...ids].map((id) => [
      id,
      pairs.filter(({ a, b }) => a === id || b === id).map(({ figure }) => figure),
    ]),
  );
}

function proofSymbols({ pictures }: Composing): SiteDrawings["proof"] {
  const kinds = Object.keys(openingWords) as readonly OpeningKind[];
  return new Map(
    visions.map(({ id }) => [
      id,
      [
        ...kinds.map((kind) => pictures.hole(`proof-${id}-${kind}`, kind)),
        pictures.bendMark(`proof-${id}-bend`),
        ...signNames.map((name, index) => pictures.sign(`proof-${id}-sign-${index + 1}`, name)),
      ],
    ]),
  );
}

/** The drawings that only the site's pages show, keyed by what they show. */
export function siteDrawings(composing: Composing, sheets: readonly SheetView[]): SiteDrawings {
  const { catalogue } = composing;
  const chains = chainCuts(composing);
  const plates = plateSides(composing);
  const alike = alikePairs(composing);
  const screws = new Map(
    [...catalogue.screws.keys()].map(
      (id) => [id, deadReadings(composing, "site", [id], cut)] as const,
    ),
  );
  const tables = new Map(
    [...catalogue.procedures.keys()].map((id) => [id, backTables(composing, id)] as const),
  );
  const drawn = { cuts: chains, dead: screws, sides: [...plates.values()], alike, tables };
  return {
    chains,
    screws,
    plates,
    alike,
    tables,
    proof: proofSymbols(composing),
    gallery: gallery(composing, sheets, drawn),
  };
}
