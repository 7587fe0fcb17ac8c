import { known } from "../model/catalogue.ts";
import { citedDocuments } from "../model/cited-documents.ts";
import { wholeMm } from "../model/measure.ts";
import type { LengthView } from "../model/sheet.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import type { Composing } from "./composing.ts";
import { deadReadings } from "./dead-readings.ts";
import { frames } from "./frame.ts";
import { lengthEntries } from "./length-entries.ts";
import { capital, spoken } from "./spoken.ts";

function columnOf(composing: Composing, screw: string): LengthView["columns"][number] {
  const { catalogue, derived } = composing;
  const { called, class: kind, system } = known(catalogue.screws, screw);
  const table = derived.lengthTables.get(screw);
  const policies = known(catalogue.systems, system).length_policy;
  const policy = kind === "locking" ? policies.locking : policies.plain_head;
  if (table === undefined || policy === undefined)
    return { screw, called, policy: "See instructions for use.", entries: [] };
  const gauge = spoken(known(catalogue.instruments, table.gauge));
  const add = table.add === 0 ? "reading" : `reading + ${wholeMm(table.add)}`;
  const { source } = policy;
  const cited = source
    ? ` ${known(catalogue.documents, source.document).title}, ${source.section}.`
    : "";
  const words = `${capital(gauge)}: ${add}, then the next length up if less than ${wholeMm(policy.overshoot_below)} mm longer.${cited}`;
  return { screw, called, policy: words, entries: lengthEntries(table) };
}

/** Millimetres: all that stands above and below the rungs, one rung, a line of a dead rung's words, a strip of pictures with its words. */
const around = 95;
const rung = 4.1;
const deadLine = 3;
const strip = 46;
const stripWords = 6;

/** Pictures of a reading between two lengths, one of a locking and one of a plain-head screw, where the ladders leave paper for them. */
function deadPictures(
  composing: Composing,
  { id, format }: SheetFrame,
  columns: LengthView["columns"],
): Pick<SheetFrame, "sections"> {
  const tallest = Math.max(
    ...columns.map(({ entries }) =>
      entries.reduce((sum, { dead }) => sum + rung + (dead ? 2 * deadLine : 0), 0),
    ),
  );
  if (format.height - around - tallest < strip) return {};
  const size = {
    width: (format.width - 2 * format.margin - stripWords) / 2,
    height: strip - stripWords,
  };
  const { screws } = composing.catalogue;
  const locking = ({ screw }: { screw: string }): boolean =>
    known(screws, screw).class === "locking";
  const ids = [columns.filter(locking), columns.filter((column) => !locking(column))].map((some) =>
    some.map(({ screw }) => screw),
  );
  const figures = ids.flatMap((some) => deadReadings(composing, id, some, size).slice(0, 1));
  return { sections: figures.map((figure) => ({ figure, words: `${figure.title}.` })) };
}

/** The numbers of a sheet's screws that sound alike when they are called, in order, as a sentence; nothing where none do. */
function heard({ derived }: Composing, screws: readonly string[]): string {
  const pairs = screws.flatMap((screw) => derived.soundAlikes.get(screw) ?? []);
  const words = [...pairs].sort(([a], [b]) => a - b).map(([a, b]) => `${wholeMm(a)}/${wholeMm(b)}`);
  const all = [...new Set(words)].join(", ");
  return all === "" ? "" : ` Sound alike: ${all}: say each figure.`;
}

/** The legend of the hatching, and what its words count from; what each dead reading lies between stands in its own row. */
const deadNote =
  "Hatched: no screw made for this reading. Ask the surgeon. Short and long count from the reading with its addition.";

/** The length sheet of one system: for each screw, every gauge reading and the next length in this rack, dead readings named. */
export function lengthSheets(composing: Composing, system: string): readonly LengthView[] {
  const { catalogue } = composing;
  const { name, file, length_policy } = known(catalogue.systems, system);
  const screws = [...catalogue.screws.values()]
    .filter((screw) => screw.system === system)
    .sort(
      (a, b) =>
        a.major - b.major ||
        (a.class === "locking" ? -1 : b.class === "locking" ? 1 : a.id < b.id ? -1 : 1),
    );
  if (screws.length === 0) return [];
  const columns = screws.map(({ id }) => columnOf(composing, id));
  const policies = [length_policy.locking, length_policy.plain_head].flatMap((policy) =>
    citedDocuments(policy?.source),
  );
  const facts = {
    id: `${system}-lengths`,
    system,
    title: `${name}: reading to next length`,
    lead: "Find the reading under the screw; beside it stands the next length in this rack. The surgeon decides.",
    cautions: [],
    origin: file,
    kind: "lengths" as const,
    shows: screws.map((screw) => `screw/${screw.id}`),
    trueSize: false,
    ...(policies.length > 0 ? { documents: [...new Set(policies)] } : {}),
  };
  return frames(composing, facts).map(
    (frame) =>
      ({
        ...frame,
        ...deadPictures(composing, frame, columns),
        kind: "lengths",
        columns,
        deadNote:
          deadNote +
          heard(
            composing,
            screws.map(({ id }) => id),
          ),
      }) satisfies LengthView,
  );
}
