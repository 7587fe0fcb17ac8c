import { createHash } from "node:crypto";
import { existsSync, readFileSync, statSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { filesBelow, hashFiles } from "./files-below.mjs";

/**
 * The value of an option written as two words or with "=", and the words without it.
 * @param {readonly string[]} argv
 * @param {string} name
 */
function takeOption(argv, name) {
  /** @type {string[]} */
  const rest = [];
  let value = "";
  for (let at = 0; at < argv.length; at++) {
    const word = argv[at] ?? "";
    if (word === name) value = argv[++at] ?? "";
    else if (word.startsWith(`${name}=`)) value = word.slice(name.length + 1);
    else rest.push(word);
  }
  return { value, rest };
}

/** @param {string} root */
function browserOf(root) {
  const file = join(root, ".trayleaf-cache", "browser.json");
  if (!existsSync(file)) return "";
  const { executable, version } = JSON.parse(readFileSync(file, "utf8"));
  return `${executable} ${version}`;
}

/**
 * SHA-256 in hex over all that a build depends on: every file of the library, templates/ and lib/, .eleventy.js, the locked
 * packages, Node, the browser that setup remembers, SOURCE_DATE_EPOCH and the words of the command.
 * A build writes it as `inputs` into the manifest of what it made; it hashes before it reads the library, so that a change
 * made meanwhile is built the next time.
 * @param {{ root: string, library: string, argv: readonly string[] }} inputs `root` is the project's folder, `library` the
 *   library's; `argv` the words after the command's name (`process.argv.slice(3)` in lib/cli.ts), of which --library, --out
 *   and --format do not count
 * @returns {string}
 */
export function hashInputs({ root, library, argv }) {
  const counted = ["--library", "--out", "--format"].reduce(
    (words, name) => takeOption(words, name).rest,
    /** @type {readonly string[]} */ (argv),
  );
  const files = [
    ...filesBelow(resolve(library)),
    ...filesBelow(join(root, "templates")),
    ...filesBelow(join(root, "lib")),
    ...[".eleventy.js", "package-lock.json"].map((name) => join(root, name)).filter(existsSync),
  ];
  const hash = createHash("sha256").update(
    JSON.stringify([
      process.versions.node,
      browserOf(root),
      process.env.SOURCE_DATE_EPOCH ?? "",
      relative(root, resolve(library)),
      counted,
    ]),
  );
  hashFiles(hash, root, files);
  return hash.digest("hex");
}

/**
 * @param {string} file
 * @returns {{ marker: string, inputs: string, summary: string[], files: Record<string, { size: number }> } | undefined}
 */
function manifestOf(file) {
  if (!existsSync(file)) return undefined;
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return undefined;
  }
}

/**
 * The summary of the last build when a build with these words would make the same again and every file that it made is
 * there at its size; else undefined. JSON is always built anew.
 * @param {{ root: string, argv: readonly string[] }} build `argv`: the words after "build"
 * @returns {readonly string[] | undefined}
 */
export function unchanged({ root, argv }) {
  if (takeOption(argv, "--format").value === "json") return undefined;
  const out = resolve(takeOption(argv, "--out").value || "dist");
  const library = resolve(takeOption(argv, "--library").value || "content");
  const made = manifestOf(join(out, ".trayleaf.json"));
  if (made?.marker !== "trayleaf" || made.inputs !== hashInputs({ root, library, argv })) {
    return undefined;
  }
  const whole = Object.entries(made.files).every(
    ([path, { size }]) => statSync(join(out, path), { throwIfNoEntry: false })?.size === size,
  );
  return whole ? made.summary : undefined;
}
