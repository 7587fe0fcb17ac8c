import { type FormatKind, formats, formatsOfKind } from "../model/format.ts";
import { enlargement, typeSizes } from "../model/type-sizes.ts";

const kinds = Object.keys(formatsOfKind) as FormatKind[];

function paper({ id, width, height, margin }: (typeof formats)[keyof typeof formats]): string {
  return `@page ${id} { size: ${width}mm ${height}mm; margin: 0; }
.format--${id} { page: ${id}; width: ${width}mm; height: ${height}mm; --margin: ${margin}mm; }
`;
}

function type(selector: string, sizes: ReturnType<typeof typeSizes>, wide = 1): string {
  const roles = Object.entries(sizes).map(([role, size]) => `--${role}: ${size}mm;`);
  return `${selector} { ${roles.join(" ")} --wide: ${wide}; }\n`;
}

/** The styles that follow from the data: every paper, and the sizes of type of every kind of sheet on every paper that makes sense for it. */
export function paperStyles(): string {
  const sizes = kinds.flatMap((kind) =>
    formatsOfKind[kind].map((id) =>
      type(
        `.sheet--${kind}.format--${id}`,
        typeSizes(kind, formats[id]),
        enlargement(kind, formats[id]),
      ),
    ),
  );
  return [
    ...Object.values(formats).map(paper),
    ...sizes,
    type(".sheet--contents", typeSizes("lengths", {})),
  ].join("");
}
