import type { Catalogue } from "../model/catalogue.ts";
import type { Derived } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import type { Procedure, ProcedureStep } from "../model/recipe.ts";

/** A step of a procedure that fills holes, and what it fills them with. */
export type Filling = {
  readonly procedure: Defined<Procedure>;
  readonly step: ProcedureStep;
  readonly index: number;
  readonly fills: NonNullable<ProcedureStep["fills"]>;
};

/** Every step of a library's procedures that fills holes, in the order of the procedures' ids. */
export function fillings({ procedures }: Pick<Catalogue, "procedures">): readonly Filling[] {
  return [...procedures.values()].flatMap((procedure) =>
    procedure.steps.flatMap((step, index) =>
      step.fills ? [{ procedure, step, index, fills: step.fills }] : [],
    ),
  );
}

/** The laid plates of some families, every side and length. */
export function platesOf(
  { plates }: Catalogue,
  derived: Derived,
  families: readonly string[],
): readonly LaidPlate[] {
  const familyOf = (id: string): string => {
    const plate = plates.get(id);
    if (plate === undefined) return "";
    return "mirror_of" in plate ? familyOf(plate.mirror_of) : plate.family;
  };
  return derived.plates.filter(({ plate }) => families.includes(familyOf(plate)));
}
