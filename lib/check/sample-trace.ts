import type { Fact, Trace } from "../model/trace.ts";

type Named = readonly [kind: Fact["kind"], id: string, path?: Fact["path"]];

/** A trace of the sample sheet for the examples of rules; a definition's file is named by its kind and id alone. */
export const sampleTrace = ({
  uses = [],
  untold = [],
}: {
  readonly uses?: readonly Named[];
  readonly untold?: readonly string[];
}): Trace => ({
  sheet: "sample",
  card: "PF-SAMPLE",
  uses: uses.map(([kind, id, path = []]) => ({ kind, id, file: `${kind}/${id}.yaml`, path })),
  claims: [],
  untold,
});
