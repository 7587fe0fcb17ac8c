import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type TypeScript from "typescript";
import { describe, expect, test } from "vitest";
import { dashes, dots, family, paints, strokes } from "../../lib/draw/tokens.ts";
import { demoDrawings, demoSheets } from "../fixtures/demo-library.ts";

/** Required: an import would look through all of its nine megabytes for what it exports. */
const ts: typeof TypeScript = createRequire(import.meta.url)("typescript");

const folder = "lib/draw";
const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .map((name) => name.replaceAll("\\", "/"))
  .filter((name) => name.endsWith(".ts") && name !== "tokens.ts");

/** Names that hold a size of type, a height of its lines or a width of a line. */
const held =
  /^(size|letter|note|largest|smallest|font.*|\w*(Size|LineHeight|Stroke|StrokeWidth)|stroke\w*)$/;

/** The pairs of a name and a number written out beside it, destructured ones and defaults included. */
function* written(node: TypeScript.Node): Generator<readonly [string, string]> {
  const pairs = (
    name: TypeScript.Node,
    value: TypeScript.Node | undefined,
  ): (readonly [TypeScript.Node, TypeScript.Node])[] => {
    if (value === undefined) return [];
    if (ts.isArrayBindingPattern(name) && ts.isArrayLiteralExpression(value))
      return name.elements.flatMap((one, index) => {
        const given = value.elements[index];
        return ts.isBindingElement(one) && given ? pairs(one.name, given) : [];
      });
    return [[name, value]];
  };
  const named =
    ts.isVariableDeclaration(node) || ts.isBindingElement(node) || ts.isParameter(node)
      ? pairs(node.name, node.initializer)
      : ts.isPropertyAssignment(node)
        ? pairs(node.name, node.initializer)
        : [];
  for (const [name, value] of named)
    if (ts.isNumericLiteral(value)) yield [name.getText(), value.text];
  const children: TypeScript.Node[] = [];
  ts.forEachChild(node, (child) => {
    children.push(child);
  });
  for (const child of children) yield* written(child);
}

const literals = (text: string): readonly string[] =>
  [...written(ts.createSourceFile("part.ts", text, ts.ScriptTarget.Latest, true))]
    .filter(([name]) => held.test(name))
    .map(([name, value]) => `${name} ${value}`);

describe("sizes of type and widths of lines", () => {
  test.each(files)("are named in tokens.ts, not written out in %s", (name) => {
    const text = readFileSync(join(folder, name), "utf8");
    expect(literals(text)).toEqual([]);
    if (name !== "canvas.ts") expect(text).not.toMatch(/stroke-width|font-size|#[0-9a-f]{6}\b/i);
  });

  test("would be seen wherever they may be written", () => {
    expect(literals("const letter = 3.5;")).toEqual(["letter 3.5"]);
    expect(literals("const [edge, sideSize] = [1, 6.5];")).toEqual(["sideSize 6.5"]);
    expect(literals("const { width, letter = 3.5 } = paper;")).toEqual(["letter 3.5"]);
    expect(literals('pen.words(at, "x", { size: 4, weight: 600 });')).toEqual(["size 4"]);
    expect(literals("const size = typeSizes.small;")).toEqual([]);
  });
});

function* figures(value: unknown): Generator<string> {
  if (value instanceof Map) yield* figures([...value.values()]);
  else if (Array.isArray(value)) for (const one of value) yield* figures(one);
  else if (typeof value === "object" && value !== null) {
    if ("svg" in value) yield String(value.svg);
    else yield* figures(Object.values(value));
  }
}

describe("every figure of the demo", () => {
  const drawn = [...figures([demoSheets(), demoDrawings()])];
  const used = (attribute: string): readonly string[] => {
    const found = drawn.flatMap((svg) =>
      [...svg.matchAll(new RegExp(` ${attribute}="([^"]*)"`, "g"))].map(([, value = ""]) => value),
    );
    return [...new Set(found)].sort();
  };
  const texts = (values: readonly unknown[]): readonly string[] => values.map(String).sort();

  const named: readonly (readonly [string, readonly string[]])[] = [
    [
      "stroke-width",
      texts([...Object.values(strokes), ...Object.values(dots).map(({ size }) => size)]),
    ],
    ["stroke-dasharray", texts(Object.values(dashes).map((dash) => dash.join(" ")))],
    ["fill", texts(Object.values(paints))],
    ["stroke", texts(Object.values(paints))],
    ["font-weight", ["400", "600", "700"]],
    ["font-family", [family]],
  ];

  test.each(named)("says no %s but those named", (attribute, allowed) => {
    expect(used(attribute).length).toBeGreaterThan(0);
    expect(used(attribute).filter((value) => !allowed.includes(value))).toEqual([]);
  });
});
