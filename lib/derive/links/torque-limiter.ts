import { nm } from "../../model/measure.ts";
import { couplingName } from "../registry-names.ts";
import type { Criteria } from "./ask.ts";

/** A torque limiter is found by the screw's torque and by a coupling that takes the driver shaft. */
export const torqueLimiterCriteria: Criteria<"torque-limiter"> = {
  torque: ({ torque }, { screw }) => {
    if (screw.torque === undefined) return "the screw states no torque";
    return torque === screw.torque
      ? undefined
      : `releases at ${nm(torque)} N·m; ${nm(screw.torque)} N·m is asked`;
  },
  coupling: ({ coupling_in }, { catalogue, settled }) => {
    const shaft = settled.get("driver");
    if (shaft?.kind !== "driver-shaft") return "the technique names no driver to join";
    return coupling_in === shaft.coupling
      ? undefined
      : `takes ${couplingName(catalogue, coupling_in)}; the driver has ${couplingName(catalogue, shaft.coupling)}`;
  },
};
