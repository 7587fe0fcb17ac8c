import type { Spot } from "../../canvas.ts";

/** A thread's sizes, mm. `lead`: stretch at the left over which it grows to full size from `tip` (default the core). `taper`: growth of the diameters along the whole length. */
export type ThreadSizes = {
  readonly major: number;
  readonly core: number;
  readonly pitch: number;
  readonly lead?: number;
  readonly tip?: number;
  readonly taper?: number;
};

/** Half widths of a thread at a place along it, mm: at its roots and at its crests. */
export function threadHalves(
  length: number,
  { major, core, lead = 0, tip = core, taper = 0 }: ThreadSizes,
): { readonly root: (x: number) => number; readonly crest: (x: number) => number } {
  const grown = (x: number): number => (lead > 0 ? Math.min(1, x / lead) : 1);
  const root = (x: number): number => (tip + (core - tip) * grown(x) + taper * (x / length)) / 2;
  return { root, crest: (x) => root(x) + ((major - core) / 2) * grown(x) };
}

/** One edge of a thread between two places along it, mm, as (place, half width): a true zigzag, one tooth a pitch, begun `shift` later. */
export function threadEdge(
  length: number,
  sizes: ThreadSizes,
  { from, to, shift }: { readonly from: number; readonly to: number; readonly shift: number },
): Spot[] {
  const { root, crest } = threadHalves(length, sizes);
  const half = sizes.pitch / 2;
  const spots: Spot[] = [[from, root(from)]];
  for (let index = Math.ceil((from - shift) / half); index * half + shift < to - 0.02; index += 1) {
    const x = index * half + shift;
    if (x > from + 0.02) spots.push([x, index % 2 === 0 ? root(x) : crest(x)]);
  }
  return [...spots, [to, root(to)]];
}
