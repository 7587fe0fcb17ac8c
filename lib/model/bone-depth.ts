import type { RecipeStep } from "./recipe.ts";

/** How far a drill goes into the bone: through both of its sides, into the near one only, or as far as the surgeon decides. */
export type BoneDepth = "both-cortices" | "near-cortex" | "surgeon-decides";

/** What is cut into the bone by the time a step is done: the gliding hole in the near cortex, the pilot hole, and whether its thread is cut in the near cortex only. */
export type Drilled = {
  readonly gliding?: true;
  readonly pilot?: BoneDepth;
  readonly tapped?: "near-cortex";
};

/** What the first steps of a technique, in their order, have cut into the bone. */
export function drilledBy(steps: readonly RecipeStep[]): Drilled {
  const pilot = steps.find(({ verb }) => verb === "drill-pilot");
  const tap = steps.find(({ verb }) => verb === "tap");
  return {
    ...(steps.some(({ verb }) => verb === "drill-gliding") ? { gliding: true } : {}),
    ...(pilot ? { pilot: depthOf(pilot) } : {}),
    ...(tap?.near_cortex_only ? { tapped: "near-cortex" } : {}),
  };
}

function depthOf({ near_cortex_only, decides }: RecipeStep): BoneDepth {
  if (near_cortex_only) return "near-cortex";
  return decides === "surgeon" ? "surgeon-decides" : "both-cortices";
}
