import { known } from "../model/catalogue.ts";
import type { Chain, Role } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { StepParts } from "../model/figure.ts";
import type { Instrument } from "../model/instrument.ts";
import type { Verb } from "../model/recipe.ts";
import { linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";

/** The chain's own instruments, screw and zone for drawing one step; the gliding drill and guide only while the gliding hole is made. */
export function stepParts({ catalogue }: Composing, chain: Chain, verb: Verb): StepParts {
  const pick = (...roles: readonly Role[]): Defined<Instrument> | undefined => {
    const id = linkOf(chain, ...roles)?.instrument;
    return id === undefined ? undefined : known(catalogue.instruments, id);
  };
  const gliding =
    verb === "drill-gliding" || (linkOf(chain, "guide") === undefined && verb === "aim-guide");
  const guide = gliding ? linkOf(chain, "gliding-guide", "guide") : linkOf(chain, "guide");
  return {
    drill: pick(
      ...(gliding ? (["gliding-drill", "pilot-drill"] as const) : (["pilot-drill"] as const)),
    ),
    guide:
      guide?.instrument === undefined ? undefined : known(catalogue.instruments, guide.instrument),
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
  };
}
