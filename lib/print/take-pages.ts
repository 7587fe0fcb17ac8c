import { Stop } from "../model/stop.ts";
import { writeOutline } from "./outline.ts";
import { packed } from "./packed.ts";
import type { PdfBook } from "./pdf-book.ts";
import type { PdfObject, PdfObjects } from "./pdf-objects.ts";
import { pdfText } from "./pdf-text.ts";
import { settleContent } from "./settle-content.ts";
import { settleFont } from "./settle-font.ts";

/** What a file says of itself. */
export type About = {
  readonly title: string;
  readonly subject?: string;
  readonly keywords?: readonly string[];
  readonly issue?: string;
  /** ISO 639 code; the document's own by default. */
  readonly language?: string;
  /** The day that it bears, ISO 8601. */
  readonly day: string;
};

const references = /\((?:\\.|[^\\)])*\)|(\d+) 0 R/g;
const structureId = /^\(node\d+\)$/;
const resourceKinds = ["ExtGState", "Font", "XObject", "Pattern", "Shading"] as const;

/** A picture that says nothing in words is decoration, and no figure to a reader. */
const decoration = (element: string): string =>
  element.includes("/S /Figure") && !element.includes("/Alt ")
    ? element.replace("/S /Figure", "/S /NonStruct")
    : element;

/** Takes the pages `from` up to but not including `to` out of a document as one of their own, with their tags, outline and
 * fonts. What comes out depends on these pages and on `about` alone: not on their neighbours, on the clock or on counters. */
export function takePages(book: PdfBook, from: number, to: number, about: About): PdfObjects {
  const { reader } = book;
  const language = about.language ?? book.language;
  const { textOf, reference, named } = reader;
  const pages = book.pages.slice(from, to);
  const objects = new Map<number, PdfObject>();
  const numbers = new Map<number, number>();
  const queue: number[] = [];
  let last = 0;
  const add = (): number => ++last;
  const put = (number: number, object: PdfObject): void => void objects.set(number, object);
  const added = (object: PdfObject): number => {
    const number = add();
    put(number, object);
    return number;
  };
  const take = (old: number): number => {
    const known = numbers.get(old);
    if (known !== undefined) return known;
    if (book.pages.includes(old))
      throw new Stop(5, "A page refers to another that is not with it.", "Run again.");
    const number = add();
    numbers.set(old, number);
    queue.push(old);
    return number;
  };

  const ids = new Map<string, number>();
  /** Structure ids in the order in which they are met: Chromium's own are a counter of its own. */
  const idOf = (old: string): string => {
    const id = ids.get(old) ?? ids.size + 1;
    ids.set(old, id);
    return `(n${String(id).padStart(6, "0")})`;
  };
  const elements: [id: string, element: number][] = [];
  const parents: number[] = [];
  const registered = (old: string): number =>
    parents.push(take(book.parents.get(Number(old)) ?? 0)) - 1;
  const settled = (text: string): string =>
    text
      .replace(references, (token, old: string | undefined) => {
        if (old !== undefined) return `${take(Number(old))} 0 R`;
        return structureId.test(token) ? idOf(token) : token;
      })
      .replace(/\/StructParent (\d+)/, (_, old: string) => `/StructParent ${registered(old)}`)
      .replace(/\n\//g, "/");

  const glyphs = new Map<number, Set<number>>();
  /** A stream of drawing and its resources, settled. */
  const drawing = (text: string, stream: string, page: boolean) => {
    const known = new Map(resourceKinds.map((kind) => [kind as string, named(text, kind)]));
    const find = (kind: string, name: string): number => known.get(kind)?.get(name) ?? 0;
    const made = settleContent(stream, {
      page,
      fontOf: (name) => reader.glyphsOf(find("Font", name)),
      used: (name, glyph) => {
        const font = find("Font", name);
        const own = glyphs.get(font) ?? new Set();
        glyphs.set(font, own.add(glyph));
      },
    });
    const entries = resourceKinds.flatMap((kind) => {
      const own = made.names.filter((one) => one.kind === kind && find(kind, one.old));
      const list = own.map(({ old, name }) => `/${name} ${take(find(kind, old))} 0 R`);
      return list.length > 0 ? [`/${kind} <<${list.join("")}>>`] : [];
    });
    return { text: made.text, resources: `/Resources <<${entries.join("")}>>` };
  };
  const copied = (old: number): PdfObject => {
    const text = textOf(old);
    const stream = reader.packedOf(old);
    if (!stream) return { text: settled(decoration(text)) };
    if (!/\/Subtype \/Form|\/PatternType 1/.test(text))
      return { text: `${settled(text)}\n`, stream };
    const { text: drawn, resources } = drawing(text, reader.streamOf(old), false);
    const rest = settled(text.replace(/\/Resources <<(?:[^<>]|<<[^>]*>>)*>>/, ""));
    const bare = rest
      .replace(/\/(Filter \/FlateDecode|Length \d+)/g, "")
      .replace(/^<<|>>\s*$/g, "");
    return packed(Buffer.from(drawn, "latin1"), `${bare.trim()}${resources}`);
  };

  const root = add();
  const info = add();
  const pageList = add();
  for (const old of pages) numbers.set(old, add());
  for (const old of pages) {
    const text = textOf(old);
    const { text: drawn, resources } = drawing(
      text,
      reader.streamOf(reference(text, "Contents")),
      true,
    );
    const content = added(packed(Buffer.from(drawn, "latin1")));
    const box = /\/MediaBox \[[^\]]*\]/.exec(text)?.[0] ?? "";
    const notes = /\/Annots \[[^\]]*\]/.exec(text)?.[0] ?? "";
    const tags = /\/StructParents (\d+)/.exec(text)?.[1];
    put(take(old), {
      text: `<</Type/Page/Parent ${pageList} 0 R${box}${resources}/Contents ${content} 0 R${settled(notes)}${
        tags === undefined ? "" : `/StructParents ${registered(tags)}/Tabs/S`
      }>>`,
    });
  }
  const kids = pages.map((old) => `${take(old)} 0 R`).join(" ");
  put(pageList, { text: `<</Type/Pages/Count ${pages.length}/Kids [${kids}]>>` });

  const own = new Set(pages);
  const tree = book.document ? add() : 0;
  if (tree) {
    const document = add();
    numbers.set(book.document, document);
    const parts = book.parts.filter(({ page }) => own.has(page));
    put(document, {
      text: `<</Type/StructElem/S/Document/Lang (${language})/P ${tree} 0 R/K [${parts
        .map(({ element }) => `${take(element)} 0 R`)
        .join(" ")}]>>`,
    });
  }
  const headings = book.headings.filter(({ page }) => own.has(page));
  const outline = headings.length > 0 ? add() : 0;
  if (outline) writeOutline(headings, outline, { add, put, take });

  const fonts = new Map<number, number>();
  for (let old = queue.shift(); old !== undefined; old = queue.shift()) {
    const number = take(old);
    if (glyphs.has(old) || /\/Type \/Font\s/.test(textOf(old))) {
      fonts.set(old, number);
      continue;
    }
    put(number, copied(old));
    const id = /\/ID \((node\d+)\)/.exec(textOf(old))?.[1];
    if (id) elements.push([idOf(`(${id})`), number]);
  }
  for (const [index, [old, number]] of [...fonts].entries()) {
    const used = glyphs.get(old) ?? new Set();
    put(
      number,
      settleFont(reader, old, { used, index, add: added }) ?? { text: settled(textOf(old)) },
    );
  }
  for (let old = queue.shift(); old !== undefined; old = queue.shift()) put(take(old), copied(old));

  if (tree) {
    const nums = parents.map((to, key) => `${key} ${to} 0 R`).join(" ");
    const list = elements.sort(([a], [b]) => (a < b ? -1 : 1)).map(([id, to]) => `${id} ${to} 0 R`);
    const parentTree = added({ text: `<</Nums [${nums}]>>` });
    const idTree = added({ text: `<</Names [${list.join(" ")}]>>` });
    put(tree, {
      text: `<</Type/StructTreeRoot/K ${take(book.document)} 0 R/ParentTree ${parentTree} 0 R/ParentTreeNextKey ${parents.length}/IDTree ${idTree} 0 R>>`,
    });
  }
  const stamp = `(D:${about.day.replaceAll("-", "")}000000+00'00')`;
  const told = [
    `/Title ${pdfText(about.title)}`,
    about.subject ? `/Subject ${pdfText(about.subject)}` : "",
    about.keywords?.length ? `/Keywords ${pdfText(about.keywords.join(", "))}` : "",
    about.issue ? `/Issue ${pdfText(about.issue)}` : "",
    `/Creator (Trayleaf)/Producer (${book.producer})/CreationDate ${stamp}/ModDate ${stamp}`,
  ];
  put(info, { text: `<<${told.join("")}>>` });
  put(root, {
    text: `<</Type/Catalog/Pages ${pageList} 0 R${
      tree ? `/MarkInfo <</Marked true>>/StructTreeRoot ${tree} 0 R` : ""
    }${outline ? `/Outlines ${outline} 0 R` : ""}/ViewerPreferences <</DisplayDocTitle true>>/Lang (${language})>>`,
  });
  return { objects, root, info, size: last + 1 };
}
