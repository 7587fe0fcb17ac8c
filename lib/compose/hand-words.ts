import { known } from "../model/catalogue.ts";
import type { Chain, Role } from "../model/chain.ts";
import { linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { spoken } from "./spoken.ts";

const order: readonly Role[] = [
  "gliding-guide",
  "gliding-drill",
  "insert",
  "sleeve",
  "guide",
  "pilot-drill",
  "tap",
  "driver",
  "limiter",
];

/** What is handed over for a chain, in order, on one line ("sleeve 3.5, drill 2.7, driver 20, limiter 1.6 N·m"); a tap only where it is needed. */
export function handWords({ catalogue }: Composing, chain: Chain): string {
  const words = order.flatMap((role) => {
    const link = linkOf(chain, role);
    if (link?.instrument === undefined || (role === "tap" && !link.required)) return [];
    const instrument = known(catalogue.instruments, link.instrument);
    const named = instrument.kind === "plain-guide" && instrument.ends.length > 1;
    return [named ? `${spoken(instrument)} ${link.end}` : spoken(instrument)];
  });
  return [
    ...words,
    ...(linkOf(chain, "limiter")?.instrument === undefined ? ["by hand"] : []),
  ].join(", ");
}
