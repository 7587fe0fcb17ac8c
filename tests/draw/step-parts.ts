import type { Defined } from "../../lib/model/definition.ts";
import type { StepParts } from "../../lib/model/figure.ts";
import type { Instrument } from "../../lib/model/instrument.ts";
import type { Interfaces } from "../../lib/model/interfaces.ts";
import type { Screw } from "../../lib/model/screw.ts";
import type { Zone } from "../../lib/model/zone.ts";

const source = { document: "fixture", section: "drawing", status: "stated" } as const;
const defined = <T>(id: string, value: T): Defined<T> => ({
  ...value,
  id,
  system: "fixture",
  file: `${id}.yaml`,
});
const tool = (value: Instrument): Defined<Instrument> =>
  defined(value.name.replaceAll(" ", "-"), value);

/** Invented couplings, drives and threads for drawing tests. */
export const interfaces: Interfaces = {
  head_threads: { "th-35": { name: "head thread 3.5", pitch: 800 } },
  drives: { "hexalobular-20": { name: "hexalobular 20", form: "hexalobular", across: 3900 } },
  couplings: {
    "drill-small": { name: "small drill", across: 4500 },
    "shaft-small": { name: "small shaft", across: 4500 },
  },
};

const driver = tool({
  kind: "driver-shaft",
  name: "driver 20",
  mark: "20",
  source,
  drive: "hexalobular-20",
  coupling: "shaft-small",
  length: 120000,
  holding_sleeve: false,
});
const handle = tool({
  kind: "handle",
  name: "handle small",
  mark: "HS",
  source,
  coupling: "shaft-small",
  length: 110000,
});
const gauge = tool({
  kind: "depth-gauge",
  name: "depth gauge",
  mark: "10-70",
  source,
  scale: { from: 10000, to: 70000, step: 2000 },
  hook: 1700,
  reads: "screw-length",
  seat: "plate-hole",
  length: 150000,
});

/** A locking screw's chain through a threaded sleeve. */
export const lockingParts: StepParts = {
  drill: tool({
    kind: "drill",
    name: "drill 2.7",
    mark: "2.7",
    source,
    diameter: 2700,
    use: "pilot",
    length: 150000,
    reach: 112000,
    coupling: "drill-small",
    bands: 3,
    marks_for_sleeve_length: 36000,
  }),
  sleeve: tool({
    kind: "threaded-sleeve",
    name: "threaded sleeve 3.5",
    mark: "3.5",
    source,
    thread: "th-35",
    bore: 2800,
    outer: 6500,
    length: 36000,
  }),
  gauge,
  driver,
  handle,
  limiter: tool({
    kind: "torque-limiter",
    name: "torque limiter 1.6",
    mark: "1.6",
    source,
    torque: 1600,
    coupling_in: "shaft-small",
    coupling_out: "shaft-small",
    hand_only: true,
    signal: "clicks once",
    length: 75000,
  }),
  screw: defined<Screw>("locking-35", {
    name: "locking screw 3.5",
    called: "Screw 3.5 locking",
    mark: "3.5",
    class: "locking",
    major: 3500,
    core: 2800,
    pitch: 800,
    thread: { extent: "full" },
    tip: "cutting",
    self_tapping: true,
    head: { form: "threaded", thread: "th-35", diameter: 5400, height: 3000 },
    drive: "hexalobular-20",
    pilot: 2700,
    torque: 1600,
    length_counts_from: "head-top",
    lengths: [{ from: 10000, to: 50000, step: 2000 }],
    source,
  }),
  zone: defined<Zone>("threaded-35", {
    kind: "threaded",
    name: "threaded part 3.5",
    through: 4100,
    thread: "th-35",
    permits: ["locking-35"],
    source,
  }),
  hooks: { count: 2, depth: 5500, spread: 7000 },
  plateThickness: 3300,
  drilled: { pilot: "both-cortices" },
};

/** A plain-head lag screw's chain through an oblong hole; the gliding drill and guide are the ones in hand. */
export const lagParts: StepParts = {
  drill: tool({
    kind: "drill",
    name: "drill 3.5",
    mark: "3.5",
    source,
    diameter: 3500,
    use: "gliding",
    length: 110000,
    reach: 80000,
    coupling: "drill-small",
    bands: 2,
  }),
  guide: tool({
    kind: "plain-guide",
    name: "gliding guide 3.5",
    mark: "3.5",
    source,
    bore: 3600,
    length: 40000,
    rests_on: "seat",
    use: "gliding",
    ends: [{ name: "free", foot: 5600 }],
  }),
  guideEnd: "free",
  insert: tool({
    kind: "reduction-insert",
    name: "insert 3.5 / 2.5",
    mark: "3.5/2.5",
    source,
    outer: 3400,
    bore: 2600,
    length: 48000,
  }),
  gauge,
  driver,
  handle,
  tap: tool({
    kind: "tap",
    name: "tap 3.5",
    mark: "3.5",
    source,
    diameter: 3500,
    pitch: 1250,
    length: 110000,
    coupling: "shaft-small",
  }),
  countersink: tool({
    kind: "countersink",
    name: "countersink 3.5",
    mark: "3.5",
    source,
    pilot: 2500,
    head: 6000,
    form: "spherical",
    length: 110000,
    coupling: "shaft-small",
  }),
  screw: defined<Screw>("cortical-35", {
    name: "cortical screw 3.5",
    called: "Screw 3.5 cortical",
    mark: "3.5",
    class: "cortical",
    major: 3500,
    core: 2400,
    pitch: 1250,
    thread: { extent: "full" },
    tip: "cutting",
    self_tapping: true,
    head: { form: "spherical", diameter: 6000, height: 2600 },
    drive: "hexalobular-20",
    pilot: 2500,
    gliding: 3500,
    length_counts_from: "head-top",
    lengths: [{ from: 10000, to: 50000, step: 2000 }],
    source,
  }),
  zone: defined<Zone>("oblong-35", {
    kind: "plain-oblong",
    name: "oblong 3.5",
    through: 4200,
    seat: 6400,
    seat_form: "spherical",
    slot: 6000,
    travel: 1000,
    permits: ["cortical-35"],
    source,
  }),
  plateThickness: 3300,
  drilled: { gliding: true, pilot: "both-cortices" },
};
