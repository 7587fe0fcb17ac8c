import { drilledBy } from "../model/bone-depth.ts";
import { known } from "../model/catalogue.ts";
import type { Chain, Link, Role } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { StepParts } from "../model/figure.ts";
import type { Instrument } from "../model/instrument.ts";
import type { RecipeStep, Verb } from "../model/recipe.ts";
import { linkFor, linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";

/** The chain's own instruments, screw and zone for drawing the step of its technique at `index`, with what is drilled by then. */
export function stepParts(composing: Composing, chain: Chain, index: number): StepParts {
  const { steps } = known(composing.catalogue.recipes, chain.recipe);
  const step = steps[index];
  if (step === undefined) throw new Error(`${chain.recipe} has no step ${index + 1}`);
  return partsFor(composing, chain, step.verb, steps.slice(0, index + 1));
}

/** The same for a verb: at the technique's own step where it has one, else when its holes are drilled. */
export function partsAtVerb(composing: Composing, chain: Chain, verb: Verb): StepParts {
  const { steps } = known(composing.catalogue.recipes, chain.recipe);
  const index = steps.findIndex((step) => step.verb === verb);
  return index < 0 ? partsFor(composing, chain, verb, steps) : stepParts(composing, chain, index);
}

/** The gliding drill and guide are shown only while the gliding hole is made. */
function partsFor(
  { catalogue }: Composing,
  chain: Chain,
  verb: Verb,
  done: readonly RecipeStep[],
): StepParts {
  const at = (link: Link | undefined): Defined<Instrument> | undefined =>
    link?.instrument === undefined ? undefined : known(catalogue.instruments, link.instrument);
  const pick = (...roles: readonly Role[]): Defined<Instrument> | undefined =>
    at(linkOf(chain, ...roles));
  const gliding =
    verb === "drill-gliding" || (linkOf(chain, "guide") === undefined && verb === "aim-guide");
  const guide = gliding ? linkOf(chain, "gliding-guide", "guide") : linkOf(chain, "guide");
  const takenOut = verb === "take-out" ? at(linkFor(chain, done.at(-1)?.uses)) : undefined;
  return {
    drill: pick(
      ...(gliding ? (["gliding-drill", "pilot-drill"] as const) : (["pilot-drill"] as const)),
    ),
    guide: at(guide),
    guideEnd: guide?.end,
    sleeve: pick("sleeve"),
    insert: pick("insert"),
    gauge: pick("gauge"),
    tap: pick("tap"),
    countersink: pick("countersink"),
    driver: pick("driver"),
    limiter: pick("limiter"),
    handle: pick("handle"),
    screw: known(catalogue.screws, chain.screw),
    zone: known(catalogue.zones, chain.zone),
    drilled: drilledBy(done),
    ...(takenOut ? { takenOut } : {}),
  };
}
