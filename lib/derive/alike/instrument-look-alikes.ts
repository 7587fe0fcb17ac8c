import type { Catalogue } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Instrument, InstrumentKind, InstrumentOf } from "../../model/instrument.ts";
import { mm, nm, wholeMm } from "../../model/measure.ts";
import { driveName, threadName } from "../registry-names.ts";
import { systemInstruments } from "../system-instruments.ts";
import { pairs } from "./pairs.ts";
import { type Feature, type Pair, told } from "./told.ts";
import { unseen } from "./weights.ts";

const long: Feature<{ readonly length: number }> = {
  value: ({ length }) => `${wholeMm(length)} mm`,
  words: (length) => `${length} long`,
  atAGlance: true,
};
const etched: Feature<{ readonly mark: string }> = {
  value: ({ mark }) => `"${mark}"`,
  words: (mark) => `etched ${mark}`,
};

/** How one kind of instrument is confused and told apart; `size` is its diameter or bore, micrometres. */
type Kind<K extends InstrumentKind> = {
  readonly kind: K;
  readonly what: Pair["what"];
  readonly size?: (part: Defined<InstrumentOf<K>>) => number;
  readonly features: (catalogue: Catalogue) => readonly Feature<Defined<InstrumentOf<K>>>[];
};

function alike<K extends InstrumentKind>(
  { kind, what, size, features }: Kind<K>,
  catalogue: Catalogue,
  instruments: readonly Defined<Instrument>[],
): readonly Pair[] {
  const own = instruments.filter(
    (one): one is Defined<Instrument> & Defined<InstrumentOf<K>> => one.kind === kind,
  );
  return pairs(own)
    .map(([a, b]) => ({
      a,
      b,
      apart: size ? Math.abs(size(a) - size(b)) : Number.POSITIVE_INFINITY,
    }))
    .filter(({ a, b, apart }) => a.mark === b.mark || apart <= unseen)
    .sort((one, other) => (one.apart === other.apart ? 0 : one.apart - other.apart))
    .map(({ a, b }) => ({ a: a.id, b: b.id, what, ...told(features(catalogue), a, b) }));
}

const drill: Kind<"drill"> = {
  kind: "drill",
  what: "drill",
  size: ({ diameter }) => diameter,
  features: () => [
    {
      value: ({ bands }) => bands?.toString(),
      words: (rings) => `${rings} ${rings === "1" ? "ring" : "rings"}`,
    },
    long,
    etched,
  ],
};
const sleeve: Kind<"threaded-sleeve"> = {
  kind: "threaded-sleeve",
  what: "sleeve",
  size: ({ bore }) => bore,
  features: (catalogue) => [
    { value: ({ thread }) => threadName(catalogue, thread), words: (thread) => thread },
    long,
    etched,
  ],
};
const guide: Kind<"plain-guide"> = {
  kind: "plain-guide",
  what: "guide",
  size: ({ bore }) => bore,
  features: () => [
    {
      value: ({ ends }) => ends[0] && `${mm(ends[0].foot)} mm`,
      words: (foot) => `foot ${foot} wide`,
    },
    long,
    etched,
  ],
};
const insert: Kind<"reduction-insert"> = {
  kind: "reduction-insert",
  what: "insert",
  size: ({ bore }) => bore,
  features: () => [
    { value: ({ outer }) => `${mm(outer)} mm`, words: (outer) => `outside ${outer} wide` },
    long,
    etched,
  ],
};
const tap: Kind<"tap"> = {
  kind: "tap",
  what: "tap",
  size: ({ diameter }) => diameter,
  features: () => [
    { value: ({ pitch }) => `${mm(pitch)} mm`, words: (pitch) => `thread pitch ${pitch}` },
    long,
    etched,
  ],
};
const driver: Kind<"driver-shaft"> = {
  kind: "driver-shaft",
  what: "driver",
  features: (catalogue) => [
    { value: ({ drive }) => driveName(catalogue, drive), words: (drive) => drive },
    long,
    etched,
  ],
};

/** Limiters that take the same shaft look alike whatever they are set to. */
function limitersAlike(instruments: readonly Defined<Instrument>[]): readonly Pair[] {
  const own = instruments.flatMap((one) => (one.kind === "torque-limiter" ? [one] : []));
  const torque: Feature<(typeof own)[number]> = {
    value: (one) => `${nm(one.torque)} N·m`,
    words: (value) => `releases at ${value}`,
  };
  return pairs(own)
    .filter(([a, b]) => a.mark === b.mark || a.coupling_in === b.coupling_in)
    .map(([a, b]) => ({ a: a.id, b: b.id, what: "limiter", ...told([etched, torque], a, b) }));
}

/** Instruments of one kind in one system with the same mark or with sizes within 0.3 mm, and limiters that fit one shaft. */
export function instrumentLookAlikes(catalogue: Catalogue, system: string): readonly Pair[] {
  const all = systemInstruments(catalogue, system);
  return [
    ...alike(drill, catalogue, all),
    ...alike(guide, catalogue, all),
    ...alike(sleeve, catalogue, all),
    ...alike(insert, catalogue, all),
    ...alike(tap, catalogue, all),
    ...alike(driver, catalogue, all),
    ...limitersAlike(all),
  ];
}
