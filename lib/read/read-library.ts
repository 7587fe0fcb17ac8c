import { lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding } from "../model/finding.ts";
import type { Locate, SourceFile } from "../model/source-file.ts";
import { Stop } from "../model/stop.ts";
import { findingOf } from "../model/told-rule.ts";
import { locateIn } from "./locate.ts";
import { parseYaml } from "./parse-yaml.ts";
import { type LibraryPlace, placeInLibrary } from "./place-in-library.ts";
import { type ReadingRule, readingRules } from "./reading-rules.ts";
import type { YamlSource } from "./yaml-source.ts";

const limits = { file: 1024 * 1024, files: 5000, total: 64 * 1024 * 1024 };
/** Notes and pictures may lie beside the facts they are about. */
const leftAlone = /^\.|\.(md|png)$/;

const finding = (rule: ReadingRule, file: string, message: string, fix?: string): Finding =>
  findingOf(
    readingRules[rule],
    { message, ...(fix === undefined ? {} : { fix }) },
    { file, path: [], line: 1, column: 1 },
  );

type Walk = {
  readonly root: string;
  readonly sources: SourceFile[];
  readonly texts: Map<string, YamlSource>;
  readonly findings: Finding[];
  files: number;
  bytes: number;
};

function readFile(walk: Walk, path: readonly string[], size: number): void {
  const file = path.join("/");
  const place = placeInLibrary(path, false);
  if (place.is === "unknown") misplaced(walk, path, place);
  if (place.is !== "definition") return;
  if (size > limits.file) {
    walk.findings.push(
      finding("limit", file, `Too many bytes: expected at most ${limits.file}, got ${size}`),
    );
    walk.sources.push({
      file,
      kind: place.kind,
      id: place.id,
      system: place.system,
      data: undefined,
      refused: true,
    });
    return;
  }
  const { data, findings, source } = parseYaml(file, readFileSync(join(walk.root, ...path)));
  walk.texts.set(file, source);
  walk.findings.push(...findings);
  const refused = findings.length > 0;
  walk.sources.push({
    file,
    kind: place.kind,
    id: place.id,
    system: place.system,
    data: refused ? undefined : data,
    ...(refused ? { refused } : {}),
  });
}

type Unknown = Extract<LibraryPlace, { readonly is: "unknown" }>;

/** What to do with a file or folder that has no place. */
function cure({ known, nearest, meant }: Unknown, isTaken: boolean): string {
  if (meant && (isTaken || meant.id === ""))
    return `Take it out of the library${isTaken ? `: ${nearest} lies here already` : ""}. Notes may end in .md, pictures in .png.`;
  if (meant) return `Rename it to ${nearest}, or take it out of the library.`;
  const first = nearest ? `Did you mean "${nearest}"?` : readingRules.name.fix;
  return `${first} ${known.length ? `Known here: ${known.join(", ")}.` : "Nothing else may lie here."}`;
}

/** A file that stands where a definition would is taken for that definition, refused: what mentions it is not told as well. */
function misplaced(walk: Walk, path: readonly string[], place: Unknown): void {
  const { meant, nearest } = place;
  const file = path.join("/");
  const folder = path.slice(0, -1);
  const isTaken =
    meant !== undefined &&
    lstatSync(join(walk.root, ...folder, String(nearest)), { throwIfNoEntry: false }) !== undefined;
  if (meant && !isTaken && meant.id !== "")
    walk.sources.push({ ...meant, file, data: undefined, refused: true });
  walk.findings.push(
    finding("name", file, `Unknown file or folder "${path.at(-1)}"`, cure(place, isTaken)),
  );
}

function readFolder(walk: Walk, folder: readonly string[]): void {
  for (const name of readdirSync(join(walk.root, ...folder)).sort((a, b) => (a < b ? -1 : 1))) {
    const path = [...folder, name];
    const entry = lstatSync(join(walk.root, ...path));
    if (!entry.isFile() && !entry.isDirectory()) {
      walk.findings.push(
        finding(
          "file",
          path.join("/"),
          `Expected a plain file, got ${entry.isSymbolicLink() ? "a symbolic link" : "a special file"}`,
        ),
      );
    } else if (leftAlone.test(name)) {
    } else if (entry.isDirectory()) {
      const place = placeInLibrary(path, true);
      if (place.is === "folder") readFolder(walk, path);
      else if (place.is === "unknown") misplaced(walk, path, place);
    } else {
      walk.files += 1;
      walk.bytes += entry.size;
      if (walk.files <= limits.files && walk.bytes <= limits.total)
        readFile(walk, path, entry.size);
    }
  }
}

/** Throws a Stop when there is no such library folder. */
export function needLibrary(root: string): void {
  if (!lstatSync(root, { throwIfNoEntry: false })?.isDirectory())
    throw new Stop(
      2,
      `There is no library folder "${root}".`,
      "Give the folder that holds publisher.yaml: --library <folder>.",
    );
}

/** Reads every file of a library folder into plain data, never following a link; all that is wrong is in `findings`. Throws a Stop when there is no such folder. */
export function readLibrary(root: string): {
  sources: SourceFile[];
  locate: Locate;
  findings: Finding[];
} {
  needLibrary(root);
  const walk: Walk = { root, sources: [], texts: new Map(), findings: [], files: 0, bytes: 0 };
  readFolder(walk, []);
  if (walk.files > limits.files)
    walk.findings.push(
      finding("limit", "", `Too many files: expected at most ${limits.files}, got ${walk.files}`),
    );
  if (walk.bytes > limits.total)
    walk.findings.push(
      finding("limit", "", `Too many bytes: expected at most ${limits.total}, got ${walk.bytes}`),
    );
  return { sources: walk.sources, locate: locateIn(walk.texts), findings: walk.findings };
}
