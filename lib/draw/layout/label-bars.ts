import { type Box, overlaps } from "./box.ts";
import type { LabelPlaces } from "./label-places.ts";

/** The box around all extents of one label's places. */
function reachOf({ starts, extents }: LabelPlaces, label: number): Box {
  const reach = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
  for (let at = 4 * (starts[label] ?? 0); at < 4 * (starts[label + 1] ?? 0); at += 4) {
    reach.x0 = Math.min(reach.x0, extents[at] ?? reach.x0);
    reach.y0 = Math.min(reach.y0, extents[at + 1] ?? reach.y0);
    reach.x1 = Math.max(reach.x1, extents[at + 2] ?? reach.x1);
    reach.y1 = Math.max(reach.y1, extents[at + 3] ?? reach.y1);
  }
  return reach;
}

/** For each label the others whose places may meet its own. */
function rivalsAmong(places: LabelPlaces): readonly number[][] {
  const reaches = places.starts.slice(1).map((_, label) => reachOf(places, label));
  return reaches.map((mine, label) =>
    [...reaches.keys()].filter((other) => {
      const theirs = reaches[other];
      return other !== label && theirs !== undefined && overlaps(mine, theirs);
    }),
  );
}

/** For a place of one label the places of all others that cannot be used beside it, in order, found out once for each place that is
 * asked for. */
export function labelBars(places: LabelPlaces, owners: Int32Array): (place: number) => Int32Array {
  const { starts } = places;
  const extents = Float64Array.from(places.extents);
  const rivals = rivalsAmong(places);
  const known = new Map<number, Int32Array>();
  const met = new Int32Array(owners.length);
  const find = (place: number): Int32Array => {
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = extents.subarray(4 * place, 4 * place + 4);
    let count = 0;
    for (const other of rivals[owners[place] ?? 0] ?? []) {
      const end = starts[other + 1] ?? 0;
      for (let at = starts[other] ?? 0; at < end; at++) {
        const theirs = 4 * at;
        if ((extents[theirs] ?? 0) >= x1 || (extents[theirs + 2] ?? 0) <= x0) continue;
        if ((extents[theirs + 1] ?? 0) >= y1 || (extents[theirs + 3] ?? 0) <= y0) continue;
        if (places.clash(place, at)) met[count++] = at;
      }
    }
    return met.slice(0, count);
  };
  return (place) => {
    const bars = known.get(place) ?? find(place);
    known.set(place, bars);
    return bars;
  };
}
