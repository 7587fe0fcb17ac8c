import type { Catalogue } from "../model/catalogue.ts";
import type { Severity } from "../model/finding.ts";
import type { Source } from "../model/source.ts";

/** How hard a rule of common practice is on a technique: it stops, unless the source of the steps is cited to a section of
 * the instructions for use (source.fields.steps); then it asks to be signed. */
export function keptOtherwise(
  { documents }: Catalogue,
  { source }: { readonly source: Source },
): Severity {
  const cited = source.fields?.steps;
  return cited && documents.get(cited.document)?.kind === "instructions-for-use" ? "sign" : "stop";
}
