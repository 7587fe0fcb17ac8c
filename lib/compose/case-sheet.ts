import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import { wholeMm } from "../model/measure.ts";
import type { CaseView, WarningBox } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { edge, landscape } from "./formats.ts";
import { fingerprinted } from "./fingerprint.ts";
import { frames } from "./frame.ts";
import { handWords } from "./hand-words.ts";
import { partWords } from "./hole-symbols.ts";
import { plateTitle, sideWords } from "./plate-facts.ts";
import { pullList } from "./pull-list.ts";

function missingBox(pull: CaseView["pull"], checked: string): WarningBox {
  const of = (status: CaseView["pull"][number]["status"], word: string): readonly string[] =>
    pull.filter((line) => line.status === status).map(({ what, place }) => `${word}: ${what} (${place}).`);
  const lines = [...of("missing", "Missing"), ...of("not checked", "Not checked")];
  return { title: "Missing for this case", lines: lines.length > 0 ? lines : [`Nothing missing when last checked, ${checked}.`] };
}

/** The sheet of one planned case: plate, hole plan, what to hand over in order, and where each part lies at the site. */
export function caseSheets(composing: Composing, id: string): readonly CaseView[] {
  const { catalogue, derived, pictures } = composing;
  const facts = known(catalogue.cases, id);
  const plate = derived.plates.find((laid) => laid.plate === facts.plate && laid.holesInRow === facts.holes);
  if (plate === undefined) return [];
  const site = known(catalogue.sites, facts.site);
  const plan = [...facts.plan].sort((a, b) => a.order - b.order || (a.hole < b.hole ? -1 : 1));
  const chainOf = (planned: (typeof plan)[number]): Chain | undefined =>
    derived.chains.find(({ zone, screw, recipe }) => zone === planned.zone && screw === planned.screw && recipe === planned.recipe);
  const chains = plan.flatMap((planned) => chainOf(planned) ?? []);
  const rows = plan.map((planned) => {
    const chain = chainOf(planned);
    const { kind } = known(catalogue.zones, planned.zone);
    const opening = plate.holes.find(({ label }) => label === planned.hole)?.kind ?? kind;
    const { name, phrase } = known(catalogue.recipes, planned.recipe);
    return {
      order: String(planned.order),
      hole: `${planned.hole} ${partWords(kind, opening)}`,
      called: known(catalogue.screws, planned.screw).called,
      technique: phrase ?? name,
      hand: chain === undefined ? "no chain: ask" : handWords(composing, chain),
      lengths: planned.lengths ? `${wholeMm(planned.lengths[0])}–${wholeMm(planned.lengths[1])}` : "surgeon decides",
    };
  });
  const pull = pullList(composing, facts, chains);
  const checked = site.trays.map(({ checked: { date } }) => date).sort()[0] ?? "never";
  const recipes = [...new Set(plan.map(({ recipe }) => recipe))];
  const about = {
    id: id.startsWith("case-") ? id : `case-${id}`, system: plate.system, title: `${facts.code}: ${facts.name}`,
    lead: facts.note ?? "The plan as told. The surgeon decides plate, holes, order and lengths.",
    cautions: recipes.flatMap((recipe) => known(catalogue.recipes, recipe).required_cautions),
    origin: facts.file, formats: landscape, trueSize: false,
  };
  return frames(composing, about).map((frame) => {
    const size = { width: (frame.format.width - 2 * edge) * 0.58, height: 42 };
    return fingerprinted<CaseView>({
      ...frame, kind: "case", code: facts.code, sideWords: sideWords(facts.side), plateWords: plateTitle(plate),
      siteWords: `${site.name}; trays checked ${checked}`,
      expires: `Expires ${facts.expires}. Destroy after the case.`,
      map: pictures.plateMap(`${about.id}-map`, plate, size, plan.map(({ hole }) => hole)),
      rows, pull, missing: missingBox(pull, checked),
    });
  });
}
