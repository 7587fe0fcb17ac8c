import { known } from "../model/catalogue.ts";
import type { Chain, Role } from "../model/chain.ts";
import { linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { capital, listed, spoken } from "./spoken.ts";
import { unparted } from "./unparted.ts";

const order: readonly Role[] = [
  "gliding-guide",
  "gliding-drill",
  "insert",
  "sleeve",
  "guide",
  "pilot-drill",
  "gauge",
  "tap",
  "driver",
  "limiter",
  "handle",
];

/** What a sheet says once where one and the same serves every chain on it. */
const onceASheet: readonly Role[] = ["gauge", "handle"];

/** How the chains of one sheet are said, each on one line. */
export type Hand = {
  /** What serves every screw of the sheet and stands on no line: "Gauge 10–70 and handle S for every screw here."; empty where nothing does. */
  readonly everyScrew: string;
  /** What is handed over for a chain, in order: "sleeve 3.5, drill 2.7, driver 20, limiter 1.6 N·m"; a tap only where it is needed. */
  readonly words: (chain: Chain) => string;
};

/** The instrument of a role that all chains have alike; undefined where they differ or one has none. */
function sharedBy(chains: readonly Chain[], role: Role): string | undefined {
  const [first, ...others] = new Set(chains.map((chain) => linkOf(chain, role)?.instrument));
  return others.length === 0 ? first : undefined;
}

/** What one and the same serves for every chain of a sheet in these roles ("Gauge 10–70 for every screw here."); empty where nothing does. */
export function everyScrew(
  { catalogue }: Composing,
  chains: readonly Chain[],
  roles: readonly Role[],
): string {
  const shared = roles
    .flatMap((role) => sharedBy(chains, role) ?? [])
    .map((id) => unparted(spoken(known(catalogue.instruments, id))));
  return shared.length > 0 ? `${capital(listed(shared))} for every screw here.` : "";
}

/** The words for the chains of one sheet: gauge and handle once where all have the same, else on the line of each. */
export function handOf(composing: Composing, chains: readonly Chain[]): Hand {
  const { catalogue } = composing;
  const once = onceASheet.filter((role) => sharedBy(chains, role) !== undefined);
  return {
    everyScrew: everyScrew(composing, chains, once),
    words: (chain) => {
      const parts = order
        .filter((role) => !once.includes(role))
        .flatMap((role) => {
          const link = linkOf(chain, role);
          if (link?.instrument === undefined || (role === "tap" && !link.required)) return [];
          const instrument = known(catalogue.instruments, link.instrument);
          const named = instrument.kind === "plain-guide" && instrument.ends.length > 1;
          return [named ? `${spoken(instrument)} ${link.end}` : spoken(instrument)];
        });
      const byHand = linkOf(chain, "limiter")?.instrument === undefined;
      return [...parts, ...(byHand ? ["by hand"] : [])].join(", ");
    },
  };
}
