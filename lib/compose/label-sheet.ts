import { known } from "../model/catalogue.ts";
import { citedDocuments } from "../model/cited-documents.ts";
import type { Format } from "../model/format.ts";
import type { LabelsView } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { formatsFor } from "./formats.ts";
import { frames } from "./frame.ts";
import { slotFacts } from "./slot-facts.ts";
import { capital } from "./spoken.ts";

type Label = LabelsView["labels"][number];

/** Stickers that lie side by side on a sheet, the height of one, and what head and foot take beside the margins, mm. */
const across = 3;
const high = 29.5;
const headAndFoot = 42;

/** How many stickers a sheet holds; the rest goes on further sheets. */
const held = ({ height, margin }: Format): number =>
  across * Math.floor((height - 2 * margin - headAndFoot) / high);

/** The stickers of one tray: its own, then one for every slot, as many sheets as that takes. */
export function labelSheets(composing: Composing, tray: string): readonly LabelsView[] {
  const { catalogue } = composing;
  const facts = known(catalogue.trays, tray);
  const base = tray.startsWith(`${facts.system}-`) ? tray : `${facts.system}-${tray}`;
  const named = `${facts.name}, ${facts.mark}, revision ${facts.revision}`;
  const own: Label = {
    slot: facts.mark,
    what: facts.name,
    mark: "",
    pieces: `total ${facts.total} pieces`,
    tray: `revision ${facts.revision}`,
    order: "",
  };
  const labels = [
    own,
    ...facts.slots.map((slot): Label => {
      const { what, mark, pieces } = slotFacts(catalogue, slot);
      const { gtin } =
        slot.holds === "instrument" ? known(catalogue.instruments, slot.instrument) : {};
      return {
        slot: slot.slot,
        what: capital(what),
        mark: `marked ${mark}`,
        pieces: `× ${pieces}`,
        tray: named,
        order: gtin ? `GTIN ${gtin}` : "",
      };
    }),
  ];
  const papers = formatsFor(composing, facts.system, "labels").map(held);
  const most = Math.ceil(labels.length / Math.min(...papers));
  return Array.from({ length: most }, (_, sheet) => sheet).flatMap((sheet) => {
    const part = most > 1 ? `-${sheet + 1}` : "";
    const about = {
      id: `${facts.system}-labels-${base.slice(facts.system.length + 1)}${part}`,
      system: facts.system,
      title: `${facts.name}: labels`,
      lead: "Cut along the lines. Stick each label at its slot.",
      cautions: [],
      origin: facts.file,
      kind: "labels" as const,
      shows: [`tray/${facts.id}`],
      trueSize: false,
      documents: citedDocuments(facts.source),
    };
    return frames(composing, about).flatMap((frame): readonly LabelsView[] => {
      const many = held(frame.format);
      const here = labels.slice(sheet * many, (sheet + 1) * many);
      if (here.length === 0) return [];
      const identity = {
        ...frame.identity,
        trayRevision: `tray revision ${facts.revision}`,
        page: `page ${sheet + 1} of ${Math.ceil(labels.length / many)}`,
      };
      return [{ ...frame, kind: "labels", identity, labels: here }];
    });
  });
}
