import type { Catalogue } from "../model/catalogue.ts";
import type { Severity } from "../model/finding.ts";
import type { Source } from "../model/source.ts";

/** How hard a rule of common practice is: it stops, unless the source of the field it is about (source.fields.<field>; the steps, if
 * not said otherwise) is cited to a section of the instructions for use; then it asks to be signed. */
export function keptOtherwise(
  { documents }: Catalogue,
  { source }: { readonly source?: Source | undefined },
  field = "steps",
): Severity {
  const cited = source?.fields?.[field];
  return cited && documents.get(cited.document)?.kind === "instructions-for-use" ? "sign" : "stop";
}
