import type { Instrument } from "../../model/instrument.ts";

/** The numbers a drawn instrument carries on its group, as `data-…`: its kind and its sizes in mm (torque in N·m). */
export function instrumentData(instrument: Instrument): Record<string, string | number> {
  const data: Record<string, string | number> = { part: instrument.kind };
  for (const key of ["diameter", "bore", "outer", "length", "pitch", "torque"] as const) {
    const value = (instrument as Partial<Record<typeof key, number>>)[key];
    if (value !== undefined) data[key] = value / 1000;
  }
  return data;
}
