import type { Mutant } from "../model/mutation.ts";
import type { SourceFile } from "../model/source-file.ts";
import { flipMutants } from "./flip-mutants.ts";
import { leaves } from "./leaves.ts";
import { listMutants } from "./list-mutants.ts";
import { numberMutants, type Unit } from "./number-mutants.ts";

type Path = readonly (string | number)[];
/** What is known of the fields of a definition: told by its schema and by the library. */
export type Fields = {
  /** What the number at a path measures. */
  readonly unit: (path: Path) => Unit;
  /** The words that the field at a path takes; none where it is free. */
  readonly choices: (path: Path) => readonly string[];
  readonly isOptional: (path: Path) => boolean;
  /** Every id it names, with the ids it could have named. */
  readonly references: readonly {
    readonly path: Path;
    readonly id: string | number;
    readonly candidates: readonly (string | number)[];
  }[];
};

/** Facts about a source are not facts about a part: they are swapped as references, not taken away. */
const isCitation = (path: Path): boolean => path.includes("source");

/** Every mutant of one file, one change each, in the order in which the file is written. */
export function mutants({ file, kind, data }: SourceFile, fields: Fields): readonly Mutant[] {
  const from = { definition: kind, file };
  const own = leaves(data).flatMap((leaf): readonly Mutant[] => {
    const { path, value } = leaf;
    const isKey = typeof path.at(-1) === "string";
    const removed: readonly Mutant[] =
      isKey && !isCitation(path) && fields.isOptional(path)
        ? [{ ...from, kind: "fact-removed", path, says: `without ${path.at(-1)}` }]
        : [];
    if (typeof value === "number")
      return [...numberMutants(from, leaf, fields.unit(path)), ...removed];
    if (typeof value === "string")
      return [...flipMutants(from, leaf, fields.choices(path)), ...removed];
    return [...listMutants(from, leaf), ...removed];
  });
  const swapped = fields.references.flatMap(({ path, id, candidates }) =>
    candidates
      .filter((other) => other !== id)
      .map(
        (value): Mutant => ({
          ...from,
          kind: "reference",
          path,
          value,
          says: `${id} becomes ${value}`,
        }),
      ),
  );
  return [
    ...own,
    ...swapped,
    { ...from, kind: "part-removed", path: [], says: "without this file" },
  ];
}
