import { mkdirSync, readdirSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { asJavaScript } from "../../lib/setup/as-javascript.mjs";
import { ownFolder } from "../cli/run-cli.ts";

/** A small project whose program says what another module tells and what lies beside it. */
function project() {
  const root = ownFolder();
  const put = (file: string, text: string) => writeFileSync(join(root, file), text);
  mkdirSync(join(root, "lib"));
  put("package-lock.json", "{}");
  put("lib/word.ts", 'export const word: string = "one";');
  put("lib/beside.txt", "beside");
  put(
    "lib/main.ts",
    'import { readFileSync } from "node:fs";\nimport { word } from "./word.ts";\nexport const says = [word, readFileSync(new URL("./beside.txt", import.meta.url), "utf8")].join(" ");',
  );
  const where = { root, cache: join(root, "cache") };
  return { put, where, program: join(root, "lib/main.ts") };
}
const saidBy = async (path: string): Promise<string> =>
  ((await import(pathToFileURL(path).href)) as { readonly says: string }).says;

describe("a program as JavaScript", () => {
  it("says what its source says, and finds what lies beside its source", async () => {
    const { where, program } = project();
    expect(await saidBy(await asJavaScript(program, where))).toBe("one beside");
  });

  it("is made once for each state of the code, by several at the same time too", async () => {
    const { where, program } = project();
    const [a, b] = await Promise.all([asJavaScript(program, where), asJavaScript(program, where)]);
    expect(b).toBe(a);
    expect(readdirSync(join(where.cache, "code"))).toHaveLength(1);
  });

  it("is made anew when a module that it imports changes, or the locked packages", async () => {
    const { put, where, program } = project();
    const before = await asJavaScript(program, where);
    put("lib/word.ts", 'export const word: string = "two";');
    const after = await asJavaScript(program, where);
    expect(after).not.toBe(before);
    expect(await saidBy(after)).toBe("two beside");
    put("package-lock.json", "{ }");
    expect(await asJavaScript(program, where)).not.toBe(after);
  });

  it("leaves none behind that nobody has made for a week", async () => {
    const { put, where, program } = project();
    const [old = ""] = (await asJavaScript(program, where)).split("/main.mjs");
    utimesSync(old, 0, 0);
    put("lib/word.ts", 'export const word: string = "two";');
    await asJavaScript(program, where);
    expect(readdirSync(join(where.cache, "code"))).toHaveLength(1);
  });

  it("is refused with the place when it is not TypeScript, and nothing is left of the attempt", async () => {
    const { put, where, program } = project();
    put("lib/word.ts", "export const = ;");
    await expect(asJavaScript(program, where)).rejects.toThrow(/word\.ts:1:13/);
    expect(readdirSync(join(where.cache, "code"))).toEqual([]);
  });
});
