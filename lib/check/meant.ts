import type { Role } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { Instrument, InstrumentKind, InstrumentOf } from "../model/instrument.ts";
import { rackSpan } from "./rack-span.ts";
import type { Work } from "./work.ts";

/** The kind of instrument that answers each role. */
export const answering = {
  "gliding-guide": "plain-guide",
  "gliding-drill": "drill",
  insert: "reduction-insert",
  guide: "plain-guide",
  sleeve: "threaded-sleeve",
  "pilot-drill": "drill",
  gauge: "depth-gauge",
  countersink: "countersink",
  tap: "tap",
  driver: "driver-shaft",
  limiter: "torque-limiter",
  handle: "handle",
} as const satisfies Record<Role, InstrumentKind>;

/** The instrument that answers a role. */
export type Tool<R extends Role> = Defined<InstrumentOf<(typeof answering)[R]>>;

const count = (...misses: readonly boolean[]): number => misses.filter(Boolean).length;

/** How far an instrument is from what the role asks; undefined when it is something else altogether. */
function distance({ zone, screw }: Work, role: Role, tool: Instrument): number | undefined {
  const gliding = role === "gliding-drill" || role === "gliding-guide";
  const drilled = gliding ? (screw.gliding ?? screw.major) : screw.pilot;
  const use = gliding ? "gliding" : "pilot";
  switch (tool.kind) {
    case "drill":
      return tool.use === use && tool.diameter === drilled ? 0 : undefined;
    case "plain-guide":
      return tool.use === use ? Math.abs(tool.bore - drilled - 100) : undefined;
    case "threaded-sleeve":
      return zone.kind === "threaded" && tool.thread === zone.thread
        ? Math.abs(tool.bore - drilled - 100)
        : undefined;
    case "reduction-insert":
      return Math.abs(tool.bore - drilled - 100);
    case "depth-gauge": {
      const { shortest, longest } = rackSpan(screw);
      return count(tool.scale.from > shortest, tool.scale.to < longest, tool.hook >= screw.pilot);
    }
    case "tap":
      return tool.diameter === screw.major ? Math.abs(tool.pitch - screw.pitch) : undefined;
    case "driver-shaft":
      return tool.drive === screw.drive ? 0 : undefined;
    case "torque-limiter":
      return Math.abs(tool.torque - (screw.torque ?? 0));
    default:
      return 0;
  }
}

/** The instrument a work uses in a role, or, where its chain stayed open, the one of its system that comes closest to what is asked. */
export function meant<R extends Role>(work: Work, role: R): Tool<R> | undefined {
  const { chain, catalogue, system } = work;
  const isTool = (tool: Defined<Instrument> | undefined): tool is Tool<R> =>
    tool?.kind === answering[role];
  const chosen = catalogue.instruments.get(
    chain?.links.find((link) => link.role === role)?.instrument ?? "",
  );
  if (isTool(chosen)) return chosen;
  return [...catalogue.instruments.values()]
    .filter((tool) => tool.system === system || tool.system === "general")
    .filter(isTool)
    .map((tool) => ({ tool, far: distance(work, role, tool) }))
    .filter(({ far }) => far !== undefined)
    .sort((a, b) => (a.far ?? 0) - (b.far ?? 0))[0]?.tool;
}
