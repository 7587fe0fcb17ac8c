import { known } from "../model/catalogue.ts";
import { citedDocuments } from "../model/cited-documents.ts";
import type { LabelsView } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { slotFacts } from "./slot-facts.ts";
import { capital } from "./spoken.ts";

type Label = LabelsView["labels"][number];

/** Stickers that lie side by side and one above the other on a sheet; the rest goes on further sheets. */
const across = 3;
const down = 8;

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
  const sheets = Math.ceil(labels.length / (across * down));
  return Array.from({ length: sheets }, (_, sheet) => sheet).flatMap((sheet) => {
    const part = sheets > 1 ? `-${sheet + 1}` : "";
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
    return frames(composing, about).map((frame) => ({
      ...frame,
      kind: "labels",
      identity: {
        ...frame.identity,
        trayRevision: `tray revision ${facts.revision}`,
        page: `page ${sheet + 1} of ${sheets}`,
      },
      labels: labels.slice(sheet * across * down, (sheet + 1) * across * down),
    }));
  });
}
