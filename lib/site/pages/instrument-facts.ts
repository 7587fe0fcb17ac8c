import type { Instrument } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { mm, nm, wholeMm } from "../../model/measure.ts";

type Fact = { readonly name: string; readonly says: string };

const fact = (name: string, says: string): Fact => ({ name, says });
const millimetres = (length: number): string => `${mm(length)} mm`;
const rings = (bands: number): string => (bands === 1 ? "1 ring" : `${bands} rings`);

function ownFacts(tool: Instrument, { head_threads, drives }: Interfaces): readonly Fact[] {
  const drive = (id: string): string => drives[id]?.name ?? id;
  switch (tool.kind) {
    case "drill":
      return [
        fact("Drills", tool.use === "pilot" ? "the pilot hole" : "the gliding hole"),
        fact("Diameter", millimetres(tool.diameter)),
        ...(tool.bands === undefined ? [] : [fact("On the shank", rings(tool.bands))]),
        ...(tool.marks_for_sleeve_length === undefined
          ? []
          : [fact("Marks read with a sleeve of", `${wholeMm(tool.marks_for_sleeve_length)} mm`)]),
      ];
    case "plain-guide":
      return [
        fact("Guides", tool.use === "pilot" ? "the pilot drill" : "the gliding drill"),
        fact("Bore", millimetres(tool.bore)),
        fact("Ends", tool.ends.map(({ name, says }) => says ?? `${name} end`).join("; ")),
      ];
    case "threaded-sleeve":
      return [
        fact("Turns into", head_threads[tool.thread]?.name ?? tool.thread),
        fact("Bore", millimetres(tool.bore)),
      ];
    case "reduction-insert":
      return [
        fact("Goes into a hole of", millimetres(tool.outer)),
        fact("Bore", millimetres(tool.bore)),
      ];
    case "depth-gauge":
      return [
        fact("Scale", `${wholeMm(tool.scale.from)} to ${wholeMm(tool.scale.to)} mm`),
        fact("Reads", tool.reads === "screw-length" ? "the screw's length" : "the bare depth"),
        fact("Rests on", tool.seat === "plate-hole" ? "the plate's hole" : `the ${tool.seat}`),
      ];
    case "tap":
      return [fact("Thread", millimetres(tool.diameter)), fact("Pitch", millimetres(tool.pitch))];
    case "countersink":
      return [
        fact("Pilot tip", millimetres(tool.pilot)),
        fact("Cuts a seat of", `${millimetres(tool.head)}, ${tool.form}`),
      ];
    case "driver-shaft":
      return [
        fact("Drive", drive(tool.drive)),
        fact("Holding sleeve", tool.holding_sleeve ? "yes" : "no"),
      ];
    case "torque-limiter":
      return [
        fact("Releases at", `${nm(tool.torque)} N·m`),
        fact("Says so by", tool.signal),
        fact("Turned", "by hand only"),
      ];
    case "wire":
      return [fact("Diameter", millimetres(tool.diameter)), fact("Tip", tool.tip)];
    case "removal-kit":
      return [fact("Drives", tool.drives.map(drive).join(", "))];
    case "bending-tool":
      return [fact("For", tool.purpose)];
    case "forceps":
      return [fact("For", tool.purpose), fact("Jaws", tool.jaws)];
    case "handle":
      return [];
  }
}

/** What is told of one instrument in words: the numbers of its kind, how it joins, its length. */
export function instrumentFacts(tool: Instrument, interfaces: Interfaces): readonly Fact[] {
  const joins = "coupling" in tool ? interfaces.couplings[tool.coupling]?.name : undefined;
  return [
    ...ownFacts(tool, interfaces),
    ...(joins === undefined ? [] : [fact("Coupling", joins)]),
    fact("Length", `${wholeMm(tool.length)} mm`),
    ...(tool.gtin === undefined ? [] : [fact("GTIN", tool.gtin)]),
  ];
}
