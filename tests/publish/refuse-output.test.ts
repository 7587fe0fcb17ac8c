import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeManifest } from "../../lib/publish/manifest.ts";
import { refuseOutput } from "../../lib/publish/refuse-output.ts";
import { ownFolder } from "../cli/run-cli.ts";

/** A home with a library, a site that was built, somebody's own files, and a link to the library. */
function home(): (name: string) => string {
  const folder = ownFolder();
  for (const name of ["library/zones", "site/copy", "papers", "empty"])
    mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, "papers/thesis.txt"), "precious");
  writeFileSync(join(folder, "site/index.html"), "built");
  writeManifest(join(folder, "site"), { inputs: "x", summary: [], prints: {} });
  symlinkSync(join(folder, "library"), join(folder, "link"));
  return (name) => join(folder, name);
}

test.each([
  ["the library itself", "library", "library", /lie in one another/],
  ["a folder of the library", "library", "library/site", /lie in one another/],
  ["a folder of the library behind a link", "library", "link/site", /lie in one another/],
  ["a built folder that the library was copied into", "site/copy", "site", /lie in one another/],
  ["a file", "library", "papers/thesis.txt", /is no folder/],
  ["a folder with other files", "library", "papers", /did not write/],
])("%s is refused as the folder to write", (_, library, out, says) => {
  const at = home();
  expect(() => refuseOutput(at(library), at(out))).toThrow(says);
});

test.each(["site", "empty", "new", "library-site"])("%s may be written", (out) => {
  const at = home();
  expect(() => refuseOutput(at("library"), at(out))).not.toThrow();
});
