import type { Rule, RuleExample } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { claimIn } from "../words/claims.ts";
import { writtenTexts } from "../written-texts.ts";

type Shown = (
  title: string,
  shows: string,
  edits: Readonly<Record<string, unknown>>,
) => RuleExample;
const said = (kind: Shown, texts: readonly string[]): RuleExample[] =>
  texts.map((text) => kind(`"${text}"`, text, { "recipe/cortical-neutral steps.0.say": text }));

/** No text makes a claim that belongs to instructions for use, regulators or the surgeon. */
export const noClaimIsMade: Rule = {
  id: "no-claim-is-made",
  severity: "stop",
  about: "words",
  summary:
    "No text, in English, German, French or Spanish, says what a screw is indicated for, what is recommended, safe or approved, how long bone heals, how to sterilise, or how a part behaves in a scanner.",
  why: "A card hands over instruments. Such claims belong to the instructions for use and the surgeon, and would be wrong for some patient.",
  fix: "Take the phrase out, or write: see instructions for use, with the section.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, path, text } of writtenTexts(catalogue)) {
      const claim = claimIn(text);
      if (claim !== undefined) yield { file, path, message: `Expected no claim, got "${claim}"` };
    }
  },
  examples: [
    ...said(passes, [
      "Make the safety check, then hold the plate.",
      "Read the indicator on the gauge.",
      "Halten, bis der Sicherungsring sitzt.",
      "Sicherheit zuerst.",
      "Assurer la plaque avec la pince.",
      "Vérifier la sûreté.",
      "Asegurar la placa.",
      "Comprobar la seguridad.",
    ]),
    ...said(fails, [
      "This plate is safe in thin bone.",
      "Recommended for short fragments.",
      "Indicated for fractures of the shaft.",
      "Contra-indicated in children.",
      "The bone heals in six weeks.",
      "MR conditional.",
      "Sterilise at 134.",
      "Compatible with other makers.",
      "Approved by the authority.",
      "Diese Platte ist sicher.",
      "Empfohlen bei kurzen Fragmenten.",
      "Cette plaque est sûre.",
      "Indiquée pour les fractures courtes.",
      "Esta placa es segura.",
      "Recomendada en fragmentos cortos.",
    ]),
  ],
};
