import { Stop } from "../model/stop.ts";
import { packed } from "./packed.ts";
import type { PdfBook } from "./pdf-book.ts";
import type { PdfObject } from "./pdf-objects.ts";
import { settleContent } from "./settle-content.ts";
import { settleFont } from "./settle-font.ts";

const references = /\((?:\\.|[^\\)])*\)|(\d+) 0 R/g;
const structureId = /^\(node\d+\)$/;
const resourceKinds = ["ExtGState", "Font", "XObject", "Pattern", "Shading"] as const;

/** A picture that says nothing in words is decoration, and no figure to a reader. */
const decoration = (element: string): string =>
  element.includes("/S /Figure") && !element.includes("/Alt ")
    ? element.replace("/S /Figure", "/S /NonStruct")
    : element;

/** Objects of a document copied under numbers of their own, in the order in which they are met, and in words that tell nothing
 * of what else the document holds. */
export class CopiedObjects {
  readonly objects = new Map<number, PdfObject>();
  /** Structure elements by their new ids. */
  readonly elements: [id: string, element: number][] = [];
  /** What registers with the structure, by its place in this list. */
  readonly parents: number[] = [];
  last = 0;
  readonly #book: PdfBook;
  readonly #numbers = new Map<number, number>();
  readonly #queue: number[] = [];
  readonly #ids = new Map<string, number>();
  /** Glyphs used of each old font. */
  readonly #glyphs = new Map<number, Set<number>>();

  constructor(book: PdfBook) {
    this.#book = book;
  }

  /** A new number. */
  readonly add = (): number => ++this.last;
  readonly put = (number: number, object: PdfObject): void => void this.objects.set(number, object);
  readonly added = (object: PdfObject): number => {
    const number = this.add();
    this.put(number, object);
    return number;
  };

  /** The new number of an old object, which is copied when its turn comes. Stops with 5 at a page that was not given a number. */
  readonly take = (old: number): number => {
    const known = this.#numbers.get(old);
    if (known !== undefined) return known;
    if (this.#book.pages.includes(old))
      throw new Stop(5, "A page refers to another that is not with it.", "Run again.");
    this.#queue.push(old);
    return this.numbered(old);
  };
  /** Gives an old object a number without copying it. */
  numbered(old: number): number {
    const number = this.add();
    this.#numbers.set(old, number);
    return number;
  }

  /** Structure ids in the order in which they are met: Chromium's own are a counter of its own. */
  #idOf(old: string): string {
    const id = this.#ids.get(old) ?? this.#ids.size + 1;
    this.#ids.set(old, id);
    return `(n${String(id).padStart(6, "0")})`;
  }
  registered(old: string): number {
    return this.parents.push(this.take(this.#book.parents.get(Number(old)) ?? 0)) - 1;
  }
  /** A text with new numbers and ids for the old. */
  settled(text: string): string {
    return text
      .replace(references, (token, old: string | undefined) => {
        if (old !== undefined) return `${this.take(Number(old))} 0 R`;
        return structureId.test(token) ? this.#idOf(token) : token;
      })
      .replace(/\/StructParent (\d+)/, (_, old: string) => `/StructParent ${this.registered(old)}`)
      .replace(/\n\//g, "/");
  }

  /** A stream of drawing whose resources the object `text` names, settled; `page` for that of a whole page. */
  drawing(text: string, stream: number, page: boolean): { drawn: Buffer; resources: string } {
    const { named, glyphsOf, streamOf } = this.#book.reader;
    const known = new Map(resourceKinds.map((kind) => [kind as string, named(text, kind)]));
    const find = (kind: string, name: string): number => known.get(kind)?.get(name) ?? 0;
    const made = settleContent(streamOf(stream), {
      page,
      fontOf: (name) => glyphsOf(find("Font", name)),
      used: (name, glyph) => {
        const font = find("Font", name);
        const own = this.#glyphs.get(font) ?? new Set();
        this.#glyphs.set(font, own.add(glyph));
      },
    });
    const entries = resourceKinds.flatMap((kind) => {
      const own = made.names.filter((one) => one.kind === kind && find(kind, one.old));
      const list = own.map(({ old, name }) => `/${name} ${this.take(find(kind, old))} 0 R`);
      return list.length > 0 ? [`/${kind} <<${list.join("")}>>`] : [];
    });
    return {
      drawn: Buffer.from(made.text, "latin1"),
      resources: `/Resources <<${entries.join("")}>>`,
    };
  }

  #copy(old: number): PdfObject {
    const { textOf, packedOf } = this.#book.reader;
    const text = textOf(old);
    const stream = packedOf(old);
    if (!stream) return { text: this.settled(decoration(text)) };
    if (!/\/Subtype \/Form|\/PatternType 1/.test(text))
      return { text: `${this.settled(text)}\n`, stream };
    const { drawn, resources } = this.drawing(text, old, false);
    const rest = this.settled(text.replace(/\/Resources <<(?:[^<>]|<<[^>]*>>)*>>/, ""));
    const bare = rest
      .replace(/\/(Filter \/FlateDecode|Length \d+)/g, "")
      .replace(/^<<|>>\s*$/g, "");
    return packed(drawn, `${bare.trim()}${resources}`);
  }

  /** Copies all that has been taken, and what that refers to in turn: fonts last, as all drawings say which glyphs they use. */
  copyTaken(): void {
    const { reader } = this.#book;
    const fonts = new Map<number, number>();
    for (let old = this.#queue.shift(); old !== undefined; old = this.#queue.shift()) {
      const number = this.take(old);
      const text = reader.textOf(old);
      if (this.#glyphs.has(old) || /\/Type \/Font\s/.test(text)) {
        fonts.set(old, number);
        continue;
      }
      this.put(number, this.#copy(old));
      const id = /\/ID \((node\d+)\)/.exec(text)?.[1];
      if (id) this.elements.push([this.#idOf(`(${id})`), number]);
    }
    for (const [index, [old, number]] of [...fonts].entries()) {
      const used = this.#glyphs.get(old) ?? new Set();
      this.put(
        number,
        settleFont(reader, old, { used, index, add: this.added }) ?? {
          text: this.settled(reader.textOf(old)),
        },
      );
    }
    for (let old = this.#queue.shift(); old !== undefined; old = this.#queue.shift())
      this.put(this.take(old), this.#copy(old));
  }
}
