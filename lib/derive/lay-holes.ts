import { type Catalogue, known } from "../model/catalogue.ts";
import type { LaidHole, LaidZone, Point } from "../model/laid-plate.ts";
import type { DrawnPlate } from "../model/plate.ts";
import type { PlateFrame } from "./plate-frame.ts";

type End = "proximal" | "distal";
type Placed = {
  readonly label: string;
  readonly opening: string;
  readonly region: "head" | "shaft";
  readonly at: Point;
  readonly threadedEnd?: End;
};

const opposite = (end: End): End => (end === "proximal" ? "distal" : "proximal");

/** The threaded end of the row's hole at `index`; the middle hole of an odd row counts with the half towards the body. */
function rowEnd(
  { row, proximal }: DrawnPlate,
  label: string,
  index: number,
  holes: number,
): End | undefined {
  const stated = row.exceptions?.[label] ?? row.threaded_end;
  if (stated === undefined || stated === "proximal" || stated === "distal") return stated;
  const towardsStart = 2 * index - (holes - 1);
  const isProximalHalf = towardsStart === 0 || towardsStart < 0 === (proximal === "start");
  const own: End = isProximalHalf ? "proximal" : "distal";
  return stated === "away-from-middle" ? own : opposite(own);
}

/** Holes by label: letters as they are first met, then numbers, whatever order they were written in. */
function byLabel(holes: readonly Placed[]): readonly Placed[] {
  const letters = [...new Set(holes.map(({ label }) => label[0]))];
  const place = ({ label }: Placed): number =>
    100 * letters.indexOf(label[0]) + Number(label.slice(1));
  return [...holes].sort((a, b) => place(a) - place(b));
}

function placed(plate: DrawnPlate, holes: number, frame: PlateFrame): readonly Placed[] {
  const { row } = plate;
  const inRow = Array.from({ length: holes }, (_, index): Placed => {
    const label = `${row.prefix}${index + 1}`;
    const threadedEnd = rowEnd(plate, label, index, holes);
    const at = frame("start", [row.first[0] + index * row.pitch, row.first[1]]);
    return {
      label,
      opening: row.opening,
      region: row.region,
      at,
      ...(threadedEnd ? { threadedEnd } : {}),
    };
  });
  const byHand = byLabel(
    plate.holes.map(
      ({ label, opening, from, at, region, threaded_end }): Placed => ({
        label,
        opening,
        region,
        at: frame(from, at),
        ...(threaded_end ? { threadedEnd: threaded_end } : {}),
      }),
    ),
  );
  return [
    ...byHand.filter(({ region }) => region === "head"),
    ...inRow,
    ...byHand.filter(({ region }) => region === "shaft"),
  ];
}

function layZone(catalogue: Catalogue, id: string, at: Point): LaidZone {
  const zone = known(catalogue.zones, id);
  return {
    zone: id,
    kind: zone.kind,
    at,
    through: zone.through,
    ...("seat" in zone ? { seat: zone.seat } : {}),
    ...("slot" in zone ? { slot: zone.slot } : {}),
  };
}

/** A combined opening's zones lie half their distance either side of its middle, the threaded one towards its end. */
function layHole(
  catalogue: Catalogue,
  { proximal }: DrawnPlate,
  { label, opening, region, at, threadedEnd }: Placed,
): LaidHole {
  const { zones, apart = 0 } = known(catalogue.openings, opening);
  const kinds = zones.map((id) => known(catalogue.zones, id).kind);
  const [kind] = kinds;
  if (kind === undefined) throw new Error("An opening has at least one zone");
  if (zones.length === 1)
    return {
      label,
      opening,
      kind,
      region,
      at,
      zones: zones.map((id) => layZone(catalogue, id, at)),
    };
  const isTowardsStart = ((threadedEnd ?? "proximal") === "proximal") === (proximal === "start");
  const threaded = Math.max(0, kinds.indexOf("threaded"));
  const laid = zones.map((id, index) => {
    const side = (index === threaded) === isTowardsStart ? -1 : 1;
    return layZone(catalogue, id, [at[0] + side * Math.round(apart / 2), at[1]]);
  });
  return {
    label,
    opening,
    kind: "combined",
    region,
    at,
    zones: laid,
    ...(threadedEnd ? { threadedEnd } : {}),
  };
}

/** Every hole of one length variant: head holes, the row from its first hole, the rest, then wires and sutures. */
export function layHoles(
  catalogue: Catalogue,
  plate: DrawnPlate,
  holes: number,
  frame: PlateFrame,
): readonly LaidHole[] {
  const laid = placed(plate, holes, frame).map((hole) => layHole(catalogue, plate, hole));
  const isSmall = ({ kind }: LaidHole): boolean => kind === "wire" || kind === "suture";
  return [...laid.filter((hole) => !isSmall(hole)), ...laid.filter(isSmall)];
}
