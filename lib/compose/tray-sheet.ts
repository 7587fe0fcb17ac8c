import { known } from "../model/catalogue.ts";
import { citedDocuments } from "../model/cited-documents.ts";
import type { TrayMapSlot } from "../model/figure.ts";
import { partner } from "../model/look-alike.ts";
import { wholeMm } from "../model/measure.ts";
import { rackPieces } from "../model/rack-pieces.ts";
import type { TrayView } from "../model/sheet.ts";
import type { SheetFrame, WarningBox } from "../model/sheet-frame.ts";
import type { Slot, Tray } from "../model/tray.ts";
import { enlargement, typeFloors, typeSizes } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { confusions, partnerWords } from "./look-alikes.ts";
import { notesHeight } from "./notes-height.ts";
import { slotFacts } from "./slot-facts.ts";
import { boxLines, warningBox } from "./warning-box.ts";

/** The middle of a slot on its tray's grid. */
const middle = ({ at, span }: Slot): readonly [number, number] => [
  at[0] + span[0] / 2,
  at[1] + span[1] / 2,
];

/** What the part in a slot is most easily taken for in its tray, and how that shows; of equals, what lies nearest. */
function takenFor(
  composing: Composing,
  slot: Slot,
  slots: readonly Slot[],
): TrayMapSlot["looksLike"] {
  const { catalogue, derived } = composing;
  const { id } = slotFacts(catalogue, slot);
  const [x, y] = middle(slot);
  const pairs = derived.lookAlikes.flatMap((pair) => {
    const away = slots
      .filter((other) => slotFacts(catalogue, other).id === partner(pair, id))
      .map((other) => Math.hypot(middle(other)[0] - x, middle(other)[1] - y));
    return away.length > 0 ? [{ pair, away: Math.min(...away) }] : [];
  });
  const [worst] = pairs.sort((a, b) => b.pair.score - a.pair.score || a.away - b.away);
  return worst && partnerWords(composing, worst.pair, id);
}

function mapSlot(composing: Composing, slot: Slot, slots: readonly Slot[]): TrayMapSlot {
  const { catalogue, derived } = composing;
  const { what, mark, pieces } = slotFacts(catalogue, slot);
  const looksLike = takenFor(composing, slot, slots);
  const plate =
    slot.holds === "plate"
      ? derived.plates.find((laid) => laid.plate === slot.plate && laid.holesInRow === slot.holes)
      : undefined;
  const screw = slot.holds === "rack" ? known(catalogue.screws, slot.screw) : undefined;
  return {
    slot: slot.slot,
    words: what,
    mark,
    quantity: `× ${pieces}`,
    ...(slot.holds === "instrument"
      ? { instrument: known(catalogue.instruments, slot.instrument) }
      : {}),
    ...(screw && slot.holds === "rack"
      ? {
          screw,
          rack: rackPieces(screw, slot).map(({ length, pieces: each }) => ({
            length: wholeMm(length),
            quantity: String(each),
          })),
        }
      : {}),
    ...(plate ? { plate } : {}),
    ...(looksLike === undefined ? {} : { looksLike }),
  };
}

/** Millimetres: beside the map the list of contents, beneath it the least box; the heading and the foot; a line of the list and one of the box. */
const listWidth = 67;
const leastBox = 9;
const outside = 50;
const listLine = 3.3;
const boxLine = 6.2;

/** How a tray's map and the box beneath it share a page: the map is to scale where the box is full, and gets what the box leaves (mm). */
function shares(composing: Composing, tray: Tray, frame: SheetFrame) {
  const { format } = frame;
  const wide = enlargement("tray", format);
  const width = format.width - 2 * format.margin - listWidth;
  const high = format.height - outside * wide - notesHeight(composing, "tray", frame);
  const list = tray.slots.length * listLine;
  const toScale = Math.min((width * tray.size.height) / tray.size.width, high - leastBox * wide);
  const room = {
    lines: Math.max(2, 2 * Math.floor((high - Math.max(toScale, list)) / (boxLine * wide)) - 2),
    width: (format.width - 2 * format.margin - 14) / 2,
    size: typeFloors("tray", format).body,
  };
  const size = ({ lines }: WarningBox): { readonly width: number; readonly height: number } => {
    if (lines.length === 0) return { width, height: high };
    const rows = Math.ceil((boxLines(composing.pictures, lines, room) + 2) / 2);
    return { width, height: Math.max(toScale, high - rows * boxLine * wide) };
  };
  return { room, size };
}

/** The card of one tray: what lies in which slot, and which neighbours look alike. */
export function traySheets(composing: Composing, tray: string): readonly TrayView[] {
  const { catalogue, pictures } = composing;
  const facts = known(catalogue.trays, tray);
  const id = tray.startsWith(`${facts.system}-`)
    ? `${facts.system}-tray-${tray.slice(facts.system.length + 1)}`
    : `${facts.system}-tray-${tray}`;
  const contents = facts.slots.map((slot) => ({ slot, ...slotFacts(catalogue, slot) }));
  const held = new Set(contents.map((one) => one.id));
  const slots = facts.slots.map((slot) => mapSlot(composing, slot, facts.slots));
  const about = {
    id,
    system: facts.system,
    title: facts.name,
    lead: "Every slot as it lies in the tray. Check the number on the metal.",
    cautions: [],
    origin: facts.file,
    kind: "tray" as const,
    shows: [`tray/${tray}`],
    trueSize: false,
    documents: citedDocuments(facts.source),
  };
  return frames(composing, about).map((frame) => {
    const { room, size } = shares(composing, facts, frame);
    const lookAlikes = warningBox(
      pictures,
      "Looks alike.",
      confusions(composing, (part) => held.has(part)),
      room,
    );
    const map = pictures.trayMap(
      `${id}-map`,
      facts,
      slots,
      catalogue.interfaces,
      size(lookAlikes),
      typeSizes("tray", frame.format),
    );
    return {
      ...frame,
      kind: "tray",
      identity: { ...frame.identity, trayRevision: `tray revision ${facts.revision}` },
      trayMark: `Marked ${facts.mark}`,
      map,
      contents: contents.map(({ slot, what, mark, pieces }) => ({
        slot: slot.slot,
        what,
        mark,
        quantity: String(pieces),
      })),
      total: `Total ${facts.total} pieces`,
      lookAlikes,
    } satisfies TrayView;
  });
}
