import type { Rule, RuleExample } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { termFinder } from "../words/terms.ts";
import { writtenTexts } from "../written-texts.ts";

type Shown = (
  title: string,
  shows: string,
  edits: Readonly<Record<string, unknown>>,
) => RuleExample;
const say = "recipe/cortical-neutral steps.0.say";
const said = (kind: Shown, texts: readonly string[]): RuleExample[] =>
  texts.map((text) => kind(`"${text}"`, text, { [say]: text }));

/** Texts use the neutral term, not a word that means two things or belongs to one house. */
export const neutralTermIsUsed: Rule = {
  id: "neutral-term-is-used",
  severity: "sign",
  about: "words",
  summary:
    "No text uses a word for which there is a neutral term: those of this list in English, German, French and Spanish, and those of the publisher's own (avoid in publisher.yaml).",
  why: "A word that belongs to one house, or that means two things, is understood by half of the room.",
  fix: "Write the neutral term.",
  source: "common practice",
  *check({ catalogue }) {
    const termIn = termFinder(catalogue.publisher.avoid);
    for (const { file, path, text } of writtenTexts(catalogue)) {
      const term = termIn(text);
      if (term !== undefined)
        yield { file, path, message: `Expected a neutral term (${term.say}), got "${term.got}"` };
    }
  },
  examples: [
    ...said(passes, [
      "Put the plain-head screw in.",
      "The longest screw of the rack.",
      "Turn it so that the etched face is on top.",
      "Eine Schraube mit glattem Kopf.",
    ]),
    ...said(fails, [
      "Put the non-locking screw in.",
      "Take the right size.",
      "Hand the long drill.",
      "A universal handle.",
      "The top hole first.",
      "Die lange Schraube.",
      "Une vis non verrouillée.",
      "Un tornillo largo.",
    ]),
    passes("a word nobody listed", "Hold the plate with the crab.", {
      [say]: "Hold the plate with the crab.",
    }),
    fails("a word of the publisher's own list", 'Avoid "crab", say "holding forceps".', {
      [say]: "Hold the plate with the crab.",
      "publisher/publisher avoid": [{ word: "crab", say: "holding forceps" }],
    }),
  ],
};
