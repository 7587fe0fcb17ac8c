import { lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding } from "../model/finding.ts";
import type { Locate, SourceFile } from "../model/source-file.ts";
import { Stop } from "../model/stop.ts";
import { locateIn } from "./locate.ts";
import { parseYaml } from "./parse-yaml.ts";
import { placeInLibrary } from "./place-in-library.ts";
import { type ReadingRule, readingRules } from "./reading-rules.ts";
import type { YamlSource } from "./yaml-source.ts";

const limits = { file: 1024 * 1024, files: 5000, total: 64 * 1024 * 1024 };
/** Notes and pictures may lie beside the facts they are about. */
const leftAlone = /^\.|\.(md|png)$/;

function finding(rule: ReadingRule, file: string, message: string, fix?: string): Finding {
  const told = readingRules[rule];
  return {
    rule: told.id,
    severity: told.severity,
    message,
    why: told.why,
    fix: fix ?? told.fix,
    place: { file, path: [], line: 1, column: 1 },
  };
}

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
  if (place.is !== "definition") {
    misplaced(walk, path, place);
    return;
  }
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

function misplaced(
  walk: Walk,
  path: readonly string[],
  place: ReturnType<typeof placeInLibrary>,
): void {
  if (place.is !== "unknown") return;
  const { nearest, known } = place;
  const fix = [
    nearest ? `Did you mean "${nearest}"?` : readingRules.name.fix,
    known.length ? `Known here: ${known.join(", ")}.` : "Nothing else may lie here.",
  ].join(" ");
  walk.findings.push(
    finding("name", path.join("/"), `Unknown file or folder "${path.at(-1)}"`, fix),
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
      else misplaced(walk, path, place);
    } else {
      walk.files += 1;
      walk.bytes += entry.size;
      if (walk.files <= limits.files && walk.bytes <= limits.total)
        readFile(walk, path, entry.size);
    }
  }
}

/** Reads every file of a library folder into plain data, never following a link; all that is wrong is in `findings`. Throws a Stop when there is no such folder. */
export function readLibrary(root: string): {
  sources: SourceFile[];
  locate: Locate;
  findings: Finding[];
} {
  const folder = lstatSync(root, { throwIfNoEntry: false });
  if (!folder?.isDirectory())
    throw new Stop(
      2,
      `There is no library folder "${root}".`,
      "Give the folder that holds publisher.yaml: --library <folder>.",
    );
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
