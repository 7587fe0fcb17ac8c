/** A picture as plain data, and the plain building of its SVG from it with template strings. */
export type StringParts = { build(): string };

/** An attribute: texts and numbers in turn, as a program that draws with strings holds them. */
type Value = readonly (string | number)[];
type Element = {
  readonly name: string;
  readonly attributes: readonly (readonly [key: string, value: Value])[];
  readonly children: Node[];
};
type Node = string | Element;

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
const plain = (text: string): string =>
  text
    .replace(/&quot;/g, '"')
    .replace(/&gt;/g, ">")
    .replace(/&lt;/g, "<")
    .replace(/&amp;/g, "&");

/** Numbers that are written again as they were read; a name with a figure in it stays text. */
function piecesOf(text: string): Value {
  return text
    .split(/(-?\b(?:0|[1-9][0-9]*)(?:\.[0-9]*[1-9])?\b)/)
    .map((piece, at) =>
      at % 2 === 1 && String(Number(piece)) === piece ? Number(piece) : plain(piece),
    );
}

/** Reads a picture into its elements, texts and numbers. */
export function stringParts(svg: string): StringParts {
  const root: Element = { name: "", attributes: [], children: [] };
  const open = [root];
  for (const [, end, name = "", inside = "", text] of svg.matchAll(
    /<(\/?)([a-z]+)((?: [a-zA-Z0-9:-]+="[^"]*")*)>|([^<]+)/g,
  )) {
    const parent = open.at(-1) ?? root;
    if (text !== undefined) parent.children.push(plain(text));
    else if (end === "/") open.pop();
    else {
      const attributes = [...inside.matchAll(/ ([a-zA-Z0-9:-]+)="([^"]*)"/g)].map(
        ([, key = "", value = ""]) => [key, piecesOf(value)] as const,
      );
      const element: Element = { name, attributes, children: [] };
      parent.children.push(element);
      open.push(element);
    }
  }
  return { build: () => root.children.map(built).join("") };
}

function built(node: Node): string {
  if (typeof node === "string") return escaped(node);
  let text = `<${node.name}`;
  for (const [key, value] of node.attributes) text += ` ${key}="${written(value)}"`;
  text += ">";
  for (const child of node.children) text += built(child);
  return `${text}</${node.name}>`;
}

function written(value: Value): string {
  let text = "";
  for (const piece of value)
    text += typeof piece === "number" ? Math.round(piece * 1000) / 1000 : escaped(piece);
  return text;
}
