import { known } from "../model/catalogue.ts";
import type { DeadReading, Figure, SectionSize } from "../model/figure.ts";
import type { Composing } from "./composing.ts";
import { sectionParts } from "./section-parts.ts";

/** The middle one of a screw's first run of readings that its rack does not answer; nothing where the rack answers all. */
function deadReadingOf({ derived }: Composing, screw: string): DeadReading | undefined {
  const table = derived.lengthTables.get(screw);
  if (table === undefined) return undefined;
  const gaps = table.readings.flatMap(({ reading, answer }) =>
    answer.kind === "gap" ? [{ reading, shorter: answer.shorter, longer: answer.longer }] : [],
  );
  const run = gaps.filter(({ shorter }) => shorter === gaps[0]?.shorter);
  const middle = run[Math.floor((run.length - 1) / 2)];
  return middle && { ...middle, add: table.add };
}

/** A picture of a reading between two lengths for each of the screws that has one, in the order given. */
export function deadReadings(
  composing: Composing,
  id: string,
  screws: readonly string[],
  size: SectionSize,
): readonly Figure[] {
  const { catalogue, derived, pictures } = composing;
  return screws.flatMap((screw) => {
    const dead = deadReadingOf(composing, screw);
    const chain = derived.chains.find((one) => one.screw === screw);
    const parts = dead && chain && sectionParts(composing, chain);
    if (dead === undefined || parts === undefined) return [];
    const name = `${id}-dead-${known(catalogue.screws, screw).id}`;
    return [pictures.deadReading(name, dead, parts, catalogue.interfaces, size)];
  });
}
