import type { Interfaces } from "../../model/interfaces.ts";
import type { Um } from "../../model/measure.ts";
import { rackLengths } from "../../model/rack-lengths.ts";
import type { Screw } from "../../model/screw.ts";
import { driveOf } from "./drive-view.ts";
import { inMm } from "./instrument-part.ts";
import { rod } from "./segments/rod.ts";
import { screwHead } from "./segments/screw-head.ts";
import { screwTip } from "./segments/screw-tip.ts";
import { thread } from "./segments/thread.ts";
import type { Segment, Shape } from "./shape.ts";

/** A screw from the side, tip to the left, mm: thread by its pitch, plain shaft where it has one, head by its form. `length` as the screw counts it, micrometres. */
export function screwShape(screw: Screw, interfaces: Interfaces, length: Um): Shape {
  const major = inMm(screw.major);
  const core = inMm(screw.core);
  const pitch = inMm(screw.pitch);
  const height = inMm(screw.head.height);
  const stem = inMm(length) - (screw.length_counts_from === "head-top" ? height : 0);
  const tip = Math.min(
    stem * 0.4,
    screw.tip === "cutting" ? pitch * 2.6 : pitch * 1.4 + core * 0.3,
  );
  const threaded =
    screw.thread.extent === "full" ? stem : Math.min(stem, inMm(screw.thread.length));
  const plain = stem - threaded;
  const sizes = { major, core, pitch };
  const shank: readonly Segment[] =
    plain > 0.05
      ? [rod(plain, inMm(screw.shaft ?? screw.core), { ends: "left", data: { edge: "shaft" } })]
      : [];
  return {
    segments: [
      screwTip(tip, sizes, screw.tip),
      thread(threaded - tip, { ...sizes, crests: pitch >= 1 }),
      ...shank,
      screwHead(
        screw.head,
        headPitch(screw, interfaces),
        core,
        driveOf(interfaces, screw.drive).across,
      ),
    ],
  };
}

/** The pitch of a threaded head by the registry, mm; 0 for a plain head. Throws (our own fault) when the registry lacks the thread. */
export function headPitch(screw: Screw, interfaces: Interfaces): number {
  if (screw.head.form !== "threaded") return 0;
  const found = interfaces.head_threads[screw.head.thread];
  if (found === undefined) throw new Error(`No head thread "${screw.head.thread}" in the registry`);
  return inMm(found.pitch);
}

/** The numbers a drawn screw carries on its group, as `data-…`, mm. */
export function screwData(screw: Screw, length: Um): Record<string, string | number> {
  return {
    part: "screw",
    major: inMm(screw.major),
    core: inMm(screw.core),
    pitch: inMm(screw.pitch),
    head: screw.head.form,
    "head-diameter": inMm(screw.head.diameter),
    length: inMm(length),
  };
}

/** The length that drawings without a given one show, micrometres: the screw's own example, else its shortest. */
export function exampleLength(screw: Screw): Um {
  const all = rackLengths(screw);
  const length = all[screw.example_length_index ?? 0] ?? all[0];
  if (length === undefined) throw new Error(`The screw "${screw.name}" has no lengths`);
  return length;
}
