import type { Verdict } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { Instrument } from "../model/instrument.ts";
import type { Query } from "../model/recipe.ts";
import type { Ask, Criteria } from "./links/ask.ts";
import { countersinkCriteria } from "./links/countersink.ts";
import { depthGaugeCriteria } from "./links/depth-gauge.ts";
import { drillCriteria } from "./links/drill.ts";
import { driverShaftCriteria } from "./links/driver-shaft.ts";
import { handleCriteria } from "./links/handle.ts";
import { plainGuideCriteria } from "./links/plain-guide.ts";
import { reductionInsertCriteria } from "./links/reduction-insert.ts";
import { tapCriteria } from "./links/tap.ts";
import { threadedSleeveCriteria } from "./links/threaded-sleeve.ts";
import { torqueLimiterCriteria } from "./links/torque-limiter.ts";

const criteria: { readonly [K in Query["kind"]]: Criteria<K> } = {
  drill: drillCriteria,
  "plain-guide": plainGuideCriteria,
  "threaded-sleeve": threadedSleeveCriteria,
  "reduction-insert": reductionInsertCriteria,
  "depth-gauge": depthGaugeCriteria,
  tap: tapCriteria,
  countersink: countersinkCriteria,
  "driver-shaft": driverShaftCriteria,
  "torque-limiter": torqueLimiterCriteria,
  handle: handleCriteria,
};

type AnyCriterion = (candidate: Defined<Instrument>, ask: Ask) => string | undefined;

/** Whether each instrument of the asked kind fits, and every reason why it does not, in the order given. */
export function judge(instruments: readonly Defined<Instrument>[], ask: Ask): readonly Verdict[] {
  const asked = Object.values(criteria[ask.query.kind]) as readonly AnyCriterion[];
  return instruments
    .filter(({ kind }) => kind === ask.query.kind)
    .map((candidate) => {
      const because = asked.flatMap((criterion) => criterion(candidate, ask) ?? []);
      return { instrument: candidate.id, fits: because.length === 0, because };
    });
}
