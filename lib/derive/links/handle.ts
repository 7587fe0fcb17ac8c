import { couplingName } from "../registry-names.ts";
import type { Ask, Criteria } from "./ask.ts";

/** The coupling that the handle must take: the limiter's where there is one, else the driver's. */
function wantedCoupling({ settled }: Ask): string | undefined {
  const [limiter, driver] = [settled.get("limiter"), settled.get("driver")];
  if (limiter?.kind === "torque-limiter") return limiter.coupling_out;
  return driver?.kind === "driver-shaft" ? driver.coupling : undefined;
}

/** A handle is found by its coupling alone. */
export const handleCriteria: Criteria<"handle"> = {
  coupling: ({ coupling }, ask) => {
    const wanted = wantedCoupling(ask);
    if (wanted === undefined) return "the technique names no driver to join";
    return coupling === wanted
      ? undefined
      : `takes ${couplingName(ask.catalogue, coupling)}; ${couplingName(ask.catalogue, wanted)} is asked`;
  },
};
