import { derive } from "../../lib/derive/derive.ts";
import type { Chain, Role } from "../../lib/model/chain.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";

/** The chains of the reference library that tests ask of. */
export const chainIds = {
  locking: "threaded-35--locking-35--locking-through-sleeve",
  neutral: "oblong-35--cortical-35--cortical-neutral",
  compression: "oblong-35--cortical-35--cortical-compression",
  lag: "oblong-35--cortical-35--lag-through-plate",
  cancellous: "plain-35--cancellous-40--cortical-neutral",
} as const;

/** A change of one record of the reference library. */
export const change = (file: string, ...path: (string | number)[]) => ({
  to: (value: unknown): Edit => ({ file, path, value }),
});

/** A chain of the reference library with edits. */
export function chainOf(id: keyof typeof chainIds, edits: readonly Edit[] = []): Chain {
  const chain = derive(referenceLibrary(edits)).chains.find((one) => one.id === chainIds[id]);
  if (chain === undefined) throw new Error(`No chain ${chainIds[id]}`);
  return chain;
}

/** What a role answered ("none" without an answer), in the reference library with edits. */
export function answerOf(
  id: keyof typeof chainIds,
  role: Role,
  edits: readonly Edit[] = [],
): string {
  return chainOf(id, edits).links.find((link) => link.role === role)?.instrument ?? "none";
}

/** Why one candidate does not fit a role; empty where it fits. */
export function reasonsOf(
  id: keyof typeof chainIds,
  role: Role,
  instrument: string,
  edits: readonly Edit[] = [],
): readonly string[] {
  const verdict = chainOf(id, edits)
    .links.find((link) => link.role === role)
    ?.verdicts.find((one) => one.instrument === instrument);
  if (verdict === undefined) throw new Error(`${instrument} was not judged for ${role}`);
  return verdict.because;
}
