import type { Catalogue } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import { mm } from "../../model/measure.ts";
import type { Screw } from "../../model/screw.ts";
import { inIdOrder } from "../in-id-order.ts";
import { driveName } from "../registry-names.ts";
import { pairs } from "./pairs.ts";
import { type Feature, type Pair, told } from "./told.ts";
import { unseen } from "./weights.ts";

const features = (catalogue: Catalogue): readonly Feature<Defined<Screw>>[] => [
  { value: ({ head }) => head.form, words: (form) => `${form} head`, atAGlance: true },
  {
    value: ({ thread }) => (thread.extent === "full" ? "to the head" : "part of the way"),
    words: (extent) => `threaded ${extent}`,
  },
  { value: ({ pitch }) => `${mm(pitch)} mm`, words: (pitch) => `thread pitch ${pitch}` },
  { value: ({ drive }) => driveName(catalogue, drive), words: (drive) => drive },
  { value: ({ mark }) => `"${mark}"`, words: (mark) => `etched ${mark}` },
];

/** Screws of one system with the same mark or near diameters. */
export function screwLookAlikes(catalogue: Catalogue, system: string): readonly Pair[] {
  const screws = inIdOrder(catalogue.screws).filter((screw) => screw.system === system);
  return pairs(screws)
    .filter(([a, b]) => a.mark === b.mark || Math.abs(a.major - b.major) <= unseen)
    .map(
      ([a, b]): Pair => ({
        a: a.id,
        b: b.id,
        what: "screw",
        ...told(features(catalogue), a, b),
      }),
    );
}
