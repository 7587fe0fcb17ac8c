import type { Defined } from "../../lib/model/definition.ts";
import { Screw } from "../../lib/model/screw.ts";

const source = { document: "sample", section: "drawing" };
const common = {
  self_tapping: true,
  drive: "hexalobular-20",
  length_counts_from: "head-top",
  source,
};

const defined = (id: string, facts: object): Defined<Screw> => ({
  ...Screw.parse({ ...common, ...facts }),
  id,
  system: "general",
  file: `${id}.yaml`,
});

/** One screw of each head form, thread extent and tip. */
export const sampleScrews: readonly Defined<Screw>[] = [
  defined("cortical-35", {
    name: "cortical screw 3.5",
    called: "Screw 3.5 cortical",
    mark: "3.5 C",
    class: "cortical",
    major: 3.5,
    core: 2.4,
    pitch: 1.25,
    thread: { extent: "full" },
    tip: "cutting",
    head: { form: "spherical", diameter: 6, height: 2.6 },
    pilot: 2.5,
    lengths: [{ from: 10, to: 50, step: 2 }],
  }),
  defined("locking-35", {
    name: "locking screw 3.5",
    called: "Screw 3.5 locking",
    mark: "3.5 L",
    class: "locking",
    major: 3.5,
    core: 2.8,
    pitch: 0.8,
    thread: { extent: "full" },
    tip: "cutting",
    head: { form: "threaded", thread: "th-35", diameter: 5.4, height: 2.8 },
    pilot: 2.7,
    torque: 1.6,
    lengths: [{ from: 10, to: 50, step: 2 }],
  }),
  defined("cancellous-65", {
    name: "cancellous screw 6.5",
    called: "Screw 6.5 cancellous",
    mark: "6.5 S",
    class: "cancellous",
    major: 6.5,
    core: 3.1,
    shaft: 4.4,
    pitch: 2.75,
    thread: { extent: "partial", length: 32 },
    tip: "rounded",
    head: { form: "conical", diameter: 8, height: 4 },
    pilot: 3.2,
    length_counts_from: "under-head",
    lengths: [{ from: 40, to: 100, step: 5 }],
  }),
];
