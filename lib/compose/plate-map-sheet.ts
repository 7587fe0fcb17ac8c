import { known } from "../model/catalogue.ts";
import type { PlateSide } from "../model/figure.ts";
import { labelSpan } from "../model/label-span.ts";
import type { LaidHole, LaidPlate } from "../model/laid-plate.ts";
import { plateTitle } from "../model/plate-name.ts";
import type { PlateMapView } from "../model/sheet.ts";
import { calledOut, chainGroups, isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { grouped } from "./grouped.ts";
import { type Hand, handOf } from "./hand-words.ts";
import { openingWords, partWords } from "./hole-symbols.ts";
import { plateAlikeLines } from "./look-alikes.ts";
import { otherSide, pairedMap } from "./paired-map.ts";
import { bendWords, orientationLines, plateSide, sideWords } from "./plate-facts.ts";
import { firstThatFits, type MapShare, mapShares } from "./plate-map-shares.ts";
import { capital } from "./spoken.ts";
import { trapLines } from "./traps.ts";

type Band = PlateMapView["bands"][number];

/** What a variant hands over that the plain technique does not. */
function apart(hand: string, plain: string): string {
  const known = new Set(plain.split(", "));
  return [...hand.split(", ").filter((word) => !known.has(word)), "the rest the same"].join(", ");
}

function bandsOf(composing: Composing, plate: LaidPlate, { words }: Hand): readonly Band[] {
  const screwed = plate.holes.filter(({ kind }) => kind !== "wire" && kind !== "suture");
  return [...grouped(screwed, ({ region, opening }) => `${region} ${opening}`).values()].map(
    (holes): Band => {
      const pairings = holes[0].zones.flatMap(({ zone, kind }) => {
        const chains = composing.derived.chains.filter(
          (chain) => chain.zone === zone && chain.system === plate.system && !isLag(chain),
        );
        const zoneWords = partWords(kind, holes[0].kind);
        const groups = chainGroups(composing, chains);
        return groups.map((group) => {
          const plain = groups.find(({ screw, phrase }) => screw === group.screw && phrase === "");
          const hand = words(group.chains[0]);
          return {
            zone: zoneWords,
            called: calledOut(composing, group),
            hand:
              plain === undefined || plain === group ? hand : apart(hand, words(plain.chains[0])),
          };
        });
      });
      return {
        region: `${capital(holes[0].region)} ${holes.length === 1 ? "hole" : "holes"}`,
        holes: labelSpan(holes.map(({ label }) => label)),
        pairings,
      };
    },
  );
}

function takesWords({ catalogue }: Composing, { zones }: LaidHole): string {
  const screws = zones.flatMap(({ zone }) => {
    const facts = known(catalogue.zones, zone);
    return "permits" in facts
      ? facts.permits.map((id) => known(catalogue.screws, id).called.replace(/^Screw /, "")).sort()
      : [];
  });
  return screws.length > 0 ? screws.join(", ") : "none";
}

/** Every hole by its label; holes that take the same share a line. */
function tableOf(composing: Composing, { holes }: LaidPlate): PlateMapView["table"] {
  const lines = holes.map((hole) => ({
    label: hole.label,
    kind: kindWords(hole),
    takes: takesWords(composing, hole),
  }));
  return [...grouped(lines, ({ kind, takes }) => `${kind} ${takes}`).values()].map((same) => ({
    ...same[0],
    label: labelSpan(same.map(({ label }) => label)),
  }));
}

function kindWords({ kind, threadedEnd }: LaidHole): string {
  return threadedEnd === undefined ? openingWords[kind] : `combined, threaded part ${threadedEnd}`;
}

function legendOf(
  { pictures }: Composing,
  id: string,
  plate: LaidPlate,
  side: PlateSide,
): PlateMapView["legend"] {
  const bends = bendWords(plate, side);
  const kinds = [...new Set(plate.holes.map(({ kind }) => kind))].map((kind) => ({
    symbol: pictures.hole(`${id}-legend-${kind}`, kind),
    words: openingWords[kind],
  }));
  if (bends === "") return kinds;
  const symbol = pictures.bendMark(`${id}-legend-bend`);
  return [
    ...kinds,
    { symbol, words: `bend zones ${bends}: only there, as the instructions for use say` },
  ];
}

/** The map of one plate in one side and length: A5, the plate as large as the page allows, its pairings beneath. */
export function plateMapSheets(composing: Composing, plate: LaidPlate): readonly PlateMapView[] {
  const { catalogue, derived, pictures } = composing;
  const id = `${plate.system}-plate-${plate.id}`.replace(
    `${plate.system}-plate-${plate.system}-`,
    `${plate.system}-plate-`,
  );
  const zones = new Set(plate.holes.flatMap((hole) => hole.zones.map(({ zone }) => zone)));
  const chains = derived.chains.filter(
    (chain) => zones.has(chain.zone) && chain.system === plate.system && !isLag(chain),
  );
  const hand = handOf(composing, chains);
  const bands = bandsOf(composing, plate, hand);
  const traps = [
    ...plateAlikeLines(composing, plate.plate),
    ...trapLines(composing, [...zones], chains),
  ];
  const table = tableOf(composing, plate);
  const side = plateSide(catalogue, plate.plate);
  const pair = [plate, otherSide(catalogue, derived, plate)] as const;
  const facts = {
    id,
    system: plate.system,
    title: plateTitle(plate, plate.holesInRow),
    origin: known(catalogue.plates, plate.plate).file,
    shows: [`plate/${plate.id}`, ...chains.map((chain) => `chain/${chain.id}`)],
    lead: `${plate.side === "none" ? "Read the plate's mark" : "Say the side aloud"} before the plate is opened. Say which part of the hole.`,
    cautions: [],
    kind: "plate-map" as const,
    trueSize: false,
  };
  const said = {
    bands,
    everyScrew: hand.everyScrew,
    legend: legendOf(composing, id, plate, side),
    orientation: orientationLines(catalogue, plate),
  };
  return frames(composing, facts).map((frame) => {
    const width = frame.format.width - 2 * frame.format.margin;
    const fromSide = (wide: number) => pictures.plateSide(`${id}-side`, plate, side, wide);
    const shapely = side.thickness.head !== undefined || plate.hooks !== undefined;
    const offered = { table, traps, ...(shapely && { fromSide }) };
    const ways = mapShares(composing, said, offered, frame);
    const mapped = (share: MapShare) => ({
      ...share,
      map: pairedMap(pictures, `${id}-map`, pair, { width, height: share.height }, { side }),
    });
    const shared = firstThatFits(
      ways.map((share) => () => mapped(share)),
      ({ map, side: beneath }) => map.fromSide === true || beneath !== undefined,
    );
    return {
      ...frame,
      kind: "plate-map",
      sideWords: sideWords(plate.side),
      ...said,
      map: shared.map,
      traps: shared.traps,
      table: shared.table,
      ...(shared.side && { side: shared.side }),
    } satisfies PlateMapView;
  });
}
