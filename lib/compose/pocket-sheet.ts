import { known } from "../model/catalogue.ts";
import type { PocketView } from "../model/sheet.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import { typeSizes } from "../model/type-sizes.ts";
import { type ChainGroup, chainGroups, isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { type Hand, handOf } from "./hand-words.ts";
import { notesHeight } from "./notes-height.ts";
import { linesOf } from "./printed-lines.ts";
import { trapLines } from "./traps.ts";
import { unparted } from "./unparted.ts";
import { warningBox } from "./warning-box.ts";

/** Height of a line as a part of the font size. */
const leading = 1.16;

function rowOf(
  composing: Composing,
  hand: Hand,
  { screw, chains, phrase }: ChainGroup,
): PocketView["rows"][number] {
  return {
    chains: chains.map(({ id }) => id),
    called: known(composing.catalogue.screws, screw).called,
    phrase,
    hand: unparted(hand.words(chains[0])),
  };
}

/** True where rows, boxes and identity do not share one face. */
function hasTwoFaces({ format }: SheetFrame): boolean {
  return format.height < 80;
}

/** Millimetres: what is not rows on a small front, a row in one line and in two, what is neither rows nor traps on a small back,
 * and what is neither rows, cautions nor traps on a card of one face; two columns of rows from this width on. */
const frontTaken = 22;
const oneLine = 4;
const twoLines = 6.9;
const backTaken = 33;
const wholeTaken = 33;
const twoColumns = 130;

/** A small card: rows on the front as far as they go, the rest with traps and identity on the back; variants and lesser cautions are left out. */
function twoFaces(
  { pictures }: Composing,
  frame: SheetFrame,
  groups: readonly ChainGroup[],
  rowOf: (group: ChainGroup) => PocketView["rows"][number],
  everyScrew: string,
  boxed: (taken: number) => PocketView["traps"],
): readonly PocketView[] {
  const { height, margin } = frame.format;
  const rows = groups.filter(({ phrase }) => phrase === "").map(rowOf);
  const width = frame.format.width - 2 * margin;
  const tall = ({ called, hand }: PocketView["rows"][number]): number =>
    linesOf(pictures, [{ text: called, weight: 700 }, { text: hand }], {
      width,
      size: typeSizes("pocket", frame.format).body,
    }) > 1
      ? twoLines
      : oneLine;
  let left = height - 2 * margin - frontTaken;
  const overflowing = rows.findIndex((row) => {
    left -= tall(row);
    return left < 0;
  });
  const room = overflowing < 0 ? rows.length : overflowing;
  const [here, there] = [rows.slice(0, room), rows.slice(room)];
  const saidAhead = left >= oneLine;
  const cautions = frame.cautions.filter(({ signal }) => signal === "WARNING");
  const face = (side: "front" | "back"): SheetFrame => ({
    ...frame,
    id: `${frame.id}-${side}`,
    identity: {
      ...frame.identity,
      page: side === "front" ? "page 1 of 2" : "page 2 of 2",
    },
  });
  const front = face("front");
  return [
    {
      ...front,
      kind: "pocket",
      face: "front",
      lead: there.length > 0 ? "More on the back." : "Traps on the back.",
      cautions: [],
      ...(saidAhead ? { everyScrew } : {}),
      identity: {
        ...front.identity,
        date: "",
        trayRevision: "",
        reviewBy: "",
        distance: "",
        sources: "",
      },
      rows: here,
      traps: { title: "", lines: [] },
    },
    {
      ...face("back"),
      kind: "pocket",
      face: "back",
      lead:
        rows.length < groups.length ? "Other techniques: pairing sheet." : "More: pairing sheet.",
      cautions,
      ...(saidAhead ? {} : { everyScrew }),
      rows: there,
      traps: boxed(
        backTaken +
          there.reduce((sum, row) => sum + tall(row), 0) +
          cautions.length * 3 +
          (saidAhead ? 0 : oneLine),
      ),
    },
  ];
}

/** The pocket card of one system: every screw with what is handed over, in words, and the traps; a small card on two faces. */
export function pocketSheets(composing: Composing, system: string): readonly PocketView[] {
  const { catalogue, derived } = composing;
  const chains = derived.chains.filter((chain) => chain.system === system && !isLag(chain));
  if (chains.length === 0) return [];
  const { name, file } = known(catalogue.systems, system);
  const groups = chainGroups(composing, chains);
  const zones = chains.map(({ zone }) => zone);
  const ranked = trapLines(composing, zones, chains);
  const hand = handOf(composing, chains);
  const { everyScrew } = hand;
  const recipes = [...new Set(chains.map(({ recipe }) => recipe))];
  const about = {
    id: `${system}-pocket`,
    system,
    title: `${name}: screw by screw`,
    lead: "Check the number on the metal.",
    cautions: recipes.flatMap((recipe) => known(catalogue.recipes, recipe).required_cautions),
    origin: file,
    kind: "pocket" as const,
    shows: chains.map((chain) => `chain/${chain.id}`),
    trueSize: false,
  };
  return frames(composing, about).flatMap((frame): readonly PocketView[] => {
    const { body } = typeSizes("pocket", frame.format);
    const { width, height, margin } = frame.format;
    const boxed = (taken: number): PocketView["traps"] =>
      warningBox(composing.pictures, "Goes in, and is wrong.", ranked, {
        lines: Math.max(2, Math.floor((height - 2 * margin - taken) / (body * leading))),
        width: width - 2 * margin - 4,
        size: body,
      });
    if (!hasTwoFaces(frame)) {
      const rows = groups.map((group) => rowOf(composing, hand, group));
      const lines = Math.ceil(rows.length / (width < twoColumns ? 1 : 2));
      const taken =
        wholeTaken +
        lines * twoLines +
        (everyScrew === "" ? 0 : oneLine) +
        notesHeight(composing, "pocket", frame);
      return [
        {
          ...frame,
          kind: "pocket",
          face: "whole",
          rows,
          everyScrew,
          traps: boxed(taken),
        },
      ];
    }
    const row = (group: ChainGroup) => rowOf(composing, hand, group);
    return twoFaces(composing, frame, groups, row, everyScrew, boxed);
  });
}
