import { type Catalogue, known } from "../../model/catalogue.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Um } from "../../model/measure.ts";
import { drawnPlate } from "../drawn-plate.ts";
import type { consequence } from "./weights.ts";

/** What two parts are compared by; what neither has is alike in both. Micrometres, or mN·m for a limiter's size. */
export type Traits = {
  readonly mark: string;
  readonly size?: Um;
  readonly length?: Um;
  readonly sign?: string | number;
  readonly joint?: string;
  /** What it only works with; parts that differ in it cannot be used for one another. */
  readonly works?: string;
  readonly lost: keyof typeof consequence;
};

/** The traits of an instrument, a screw or a plate (in its shortest length). */
export function traitsOf(catalogue: Catalogue, plates: readonly LaidPlate[], id: string): Traits {
  const screw = catalogue.screws.get(id);
  if (screw)
    return {
      mark: screw.mark,
      size: screw.major,
      sign: screw.head.form,
      joint: screw.drive,
      lost: "hold",
    };
  const plate = catalogue.plates.get(id);
  if (plate) {
    const laid = plates.find((one) => one.plate === id);
    return {
      mark: plate.mark,
      ...(laid ? { size: laid.bounds.max[1] - laid.bounds.min[1], length: laid.length } : {}),
      sign: drawnPlate(catalogue, plate).thickness.shaft,
      lost: "hold",
    };
  }
  const tool = known(catalogue.instruments, id);
  const { mark, length } = tool;
  switch (tool.kind) {
    case "drill":
      return {
        mark,
        length,
        size: tool.diameter,
        ...(tool.bands === undefined ? {} : { sign: tool.bands }),
        joint: tool.coupling,
        lost: "hold",
      };
    case "tap":
      return {
        mark,
        length,
        size: tool.diameter,
        sign: tool.pitch,
        joint: tool.coupling,
        lost: "hold",
      };
    case "threaded-sleeve":
      return {
        mark,
        length,
        size: tool.bore,
        sign: tool.thread,
        works: tool.thread,
        lost: "rework",
      };
    case "plain-guide":
      return { mark, length, size: tool.bore, lost: "rework" };
    case "reduction-insert":
      return { mark, length, size: tool.bore, sign: tool.outer, lost: "rework" };
    case "driver-shaft":
      return {
        mark,
        length,
        sign: tool.drive,
        works: tool.drive,
        joint: tool.coupling,
        lost: "delay",
      };
    case "torque-limiter":
      return { mark, length, size: tool.torque, joint: tool.coupling_in, lost: "hold" };
    default:
      return { mark, length, lost: "delay" };
  }
}
