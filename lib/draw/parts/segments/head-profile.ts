import type { Screw } from "../../../model/screw.ts";
import { inMm } from "../instrument-part.ts";
import type { ThreadSizes } from "./thread-edge.ts";

/** The thread of a threaded head, mm: a cone that widens towards the head's top by its own pitch. */
export function headThread(head: Screw["head"], pitch: number): ThreadSizes {
  const wide = inMm(head.diameter);
  const taper = Math.min(inMm(head.height) * 0.35, wide * 0.25);
  return { major: wide - taper, core: wide - taper - pitch * 0.8, pitch, taper };
}

/** The part of a plain head's height over which it widens. */
const bowlPart = 0.72;

/** The under side of a plain head, mm from its neck to where it is widest: a bowl when spherical, else a cone. */
export function headBowl(
  head: Screw["head"],
  neck: number,
): { readonly height: number; readonly half: (x: number) => number } {
  const height = inMm(head.height) * bowlPart;
  const growth = (inMm(head.diameter) - neck) / 2;
  const half = (x: number): number => {
    const part = Math.min(1, Math.max(0, x) / height);
    return neck / 2 + growth * (head.form === "spherical" ? Math.sqrt(1 - (1 - part) ** 2) : part);
  };
  return { height, half };
}
