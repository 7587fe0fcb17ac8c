import type { Fact } from "../../model/trace.ts";
import type { Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

const folders: Readonly<Partial<Record<Fact["kind"], string>>> = {
  screw: "screws",
  instrument: "instruments",
  plate: "plates",
  tray: "trays",
  system: "systems",
  procedure: "procedures",
  document: "documents",
};

/** A definition or one of its fields by name, leading to its page where it has one. */
export function definitionLink({ kind, id, path }: Fact): Link {
  const folder = folders[kind];
  const text = [`${kind} ${id}`, ...(path.length > 0 ? [path.join(" ")] : [])].join(": ");
  return folder ? { text, to: `${folder}/${id}.html` } : { text };
}

/** The line of the library that a fact stands on, with its text ("screws/a.yaml:12 pilot: 2"). */
export function lineLink({ locate }: SiteInput, { file, path }: Fact): Link {
  const nothing = { rule: "", severity: "note", message: "", why: "", fix: "" } as const;
  const { line, frame } = locate({ ...nothing, place: { file, path } });
  const text = frame[0]?.replace(/^\s*\d+ \| ?/, "").trim() ?? "";
  return { text: `${file}:${line}${path.length > 0 ? ` ${text}` : ""}` };
}
