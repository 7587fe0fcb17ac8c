import { known } from "../model/catalogue.ts";
import { citedDocuments } from "../model/cited-documents.ts";
import type { TrayMapSlot } from "../model/figure.ts";
import { partner } from "../model/look-alike.ts";
import { wholeMm } from "../model/measure.ts";
import type { TrayView } from "../model/sheet.ts";
import type { Slot } from "../model/tray.ts";
import { enlargement, typeFloors, typeSizes } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { confusions, partnerWords } from "./look-alikes.ts";
import { rackPieces, slotFacts } from "./slot-facts.ts";
import { warningBox } from "./warning-box.ts";

/** The middle of a slot on its tray's grid. */
const middle = ({ at, span }: Slot): readonly [number, number] => [
  at[0] + span[0] / 2,
  at[1] + span[1] / 2,
];

/** What the part in a slot is most easily taken for in its tray, and how that shows; of equals, what lies nearest. */
function takenFor(composing: Composing, slot: Slot, slots: readonly Slot[]): string | undefined {
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

/** Millimetres beside and beneath the map: the list of contents, the heading and the foot. */
const listWidth = 67;
const around = 59;
const outside = 50;
const listLine = 3.3;
const boxLine = 6.2;

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
    const wide = enlargement("tray", frame.format);
    const size = {
      width: frame.format.width - 2 * frame.format.margin - listWidth,
      height: frame.format.height - 2 * frame.format.margin - around * wide,
    };
    const map = pictures.trayMap(
      `${id}-map`,
      facts,
      slots,
      catalogue.interfaces,
      size,
      typeSizes("tray", frame.format),
    );
    const left =
      frame.format.height - outside * wide - Math.max(map.height, facts.slots.length * listLine);
    const room = {
      lines: Math.max(2, 2 * Math.floor(left / (boxLine * wide)) - 2),
      width: (frame.format.width - 2 * frame.format.margin - 14) / 2,
      size: typeFloors("tray", frame.format).body,
    };
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
      lookAlikes: warningBox(
        composing.pictures,
        "Looks alike.",
        confusions(composing, (part) => held.has(part)),
        room,
      ),
    } satisfies TrayView;
  });
}
