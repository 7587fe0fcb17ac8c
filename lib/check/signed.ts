import { type Catalogue, known } from "../model/catalogue.ts";
import type { Defined } from "../model/definition.ts";
import type { Finding } from "../model/finding.ts";
import type { SignOff } from "../model/sign-off.ts";

/** True when a sign-off names the place of a finding: same rule, same file, same keys. */
export const isAbout = (
  { rule, found_in, at = "" }: SignOff,
  { rule: by, place }: Pick<Finding, "rule" | "place">,
): boolean => rule === by && found_in === place.file && at === place.path.join(".");

/** True when a sign-off signs a finding: it names its place, its words are the finding's words, and the finding is one that may be signed. */
export const signs = (signOff: Defined<SignOff>, finding: Finding): boolean =>
  finding.severity === "sign" && isAbout(signOff, finding) && signOff.finding === finding.message;

/** The finding with its signature, where a sign-off of the library signs it and its document is there to be read. */
export function signed({ signOffs, documents }: Catalogue, finding: Finding): Finding {
  const by = [...signOffs.values()].find(
    (signOff) => documents.has(signOff.source.document) && signs(signOff, finding),
  );
  if (by === undefined) return finding;
  const { file, role, reason, date, source } = by;
  const { title, issue } = known(documents, source.document);
  return {
    ...finding,
    signed: { file, role, reason, date, source: `${title}, issue ${issue}, ${source.section}` },
  };
}
