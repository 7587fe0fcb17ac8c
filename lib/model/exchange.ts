import type { Chain, Role } from "./chain.ts";
import type { ProcedureStep } from "./recipe.ts";

/** What can be exchanged between two screws, in the order in which it is handed over, with the parts that a chain has of it. */
const roles = {
  drill: ["gliding-drill", "pilot-drill"],
  guide: ["gliding-guide", "guide"],
  sleeve: ["sleeve"],
  driver: ["driver"],
  limiter: ["limiter"],
} as const satisfies Readonly<Record<ProcedureStep["changes"][number], readonly Role[]>>;
export type Exchangeable = keyof typeof roles;
export const exchangeables = Object.keys(roles) as readonly Exchangeable[];

/** The instruments that a chain has of something, by their ids; empty where it has none. */
export const heldOf = ({ links }: Chain, what: Exchangeable): string =>
  links
    .flatMap(({ role, instrument }) =>
      instrument !== undefined && (roles[what] as readonly Role[]).includes(role) ? instrument : [],
    )
    .join(" and ");

/** Whether a chain has something that does not lie in the hand from the chain before it: another one, or one where none was. A guide turned round stays the same guide. */
export function isTakenUp(before: Chain, now: Chain, what: Exchangeable): boolean {
  const own = heldOf(now, what);
  return own !== "" && own !== heldOf(before, what);
}

/** Whether what a chain has of something lies in the hand instead of what another had. */
export function isExchanged(before: Chain, now: Chain, what: Exchangeable): boolean {
  return heldOf(before, what) !== "" && isTakenUp(before, now, what);
}
