import type { Figure } from "../model/figure.ts";
import type { Instrument } from "../model/instrument.ts";
import type { Interfaces } from "../model/interfaces.ts";
import { mm, nm } from "../model/measure.ts";
import type { Screw } from "../model/screw.ts";

type Numbers = NonNullable<Figure["facts"]>;

const counted = new Set(["bands"]);
const words: Readonly<Record<string, string>> = {
  bands: "rings on the shank",
  marks_for_sleeve_length: "marks allow for a sleeve of",
  rests_on: "rests on",
  coupling_in: "coupling in",
  coupling_out: "coupling out",
};
const shared = {
  thread: "head_threads",
  drive: "drives",
  coupling: "couplings",
  coupling_in: "couplings",
  coupling_out: "couplings",
} as const;
const told = new Set(["use", "rests_on", "form", "tip", "purpose"]);

/** The facts an instrument is drawn from, in words, in the order of its kind's schema. */
export function instrumentNumbers(instrument: Instrument, interfaces: Interfaces): Numbers {
  return Object.entries(instrument).flatMap(([key, value]: [string, unknown]): Numbers => {
    const what = words[key] ?? key;
    if (key === "torque" && typeof value === "number") return [[what, `${nm(value)} N·m`]];
    if (typeof value === "number")
      return [[what, counted.has(key) ? String(value) : `${mm(value)} mm`]];
    if (typeof value === "string" && key in shared)
      return [[what, interfaces[shared[key as keyof typeof shared]][value]?.name ?? value]];
    if (typeof value === "string" && told.has(key)) return [[what, value.replaceAll("-", " ")]];
    if (instrument.kind === "depth-gauge" && key === "scale") {
      const { from, to, step } = instrument.scale;
      return [["scale", `${mm(from)} to ${mm(to)} mm, a tick every ${mm(step)} mm`]];
    }
    if (instrument.kind === "plain-guide" && key === "ends")
      return instrument.ends.map(({ name, foot, offset }) => [
        `${name} end`,
        `foot ${mm(foot)} mm${offset === undefined ? "" : `, bore ${mm(offset)} mm off its middle`}`,
      ]);
    return [];
  });
}

/** The facts a screw's side view is drawn from, in words. */
export function screwNumbers(screw: Screw, interfaces: Interfaces): Numbers {
  const { head, thread } = screw;
  return [
    ["thread", `${mm(screw.major)} mm, core ${mm(screw.core)} mm, pitch ${mm(screw.pitch)} mm`],
    ["threaded", thread.extent === "full" ? "to the head" : `${mm(thread.length)} mm from the tip`],
    ["head", `${head.form}, ${mm(head.diameter)} mm wide, ${mm(head.height)} mm high`],
    ["tip", screw.tip],
    ["drive", interfaces.drives[screw.drive]?.name ?? screw.drive],
  ];
}
