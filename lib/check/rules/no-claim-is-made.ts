import type { Rule } from "../../model/rule.ts";
import { writtenTexts } from "../written-texts.ts";

/** Phrases that say what a card must never say; whole words, so that "safety" and "indicator" do not trip. */
const claims: readonly RegExp[] = [
  /\brecommend(s|ed|ation|ations)?\b/i,
  /\bcontra-?indicat(ed|ion|ions|es)\b/i,
  /\bindicated (for|in|when)\b/i,
  /\bindications?\b/i,
  /\bsafe(ly)?\b/i,
  /\bheals? (in|within|after)\b/i,
  /\bhealing time\b/i,
  /\bfull weight[- ]bearing\b/i,
  /\bweight[- ]bearing (after|from|at)\b/i,
  /\b(MR|MRI)[- ](conditional|safe|compatible)\b/i,
  /\bmagnetic[- ]resonance\b/i,
  /\bsterili[sz]e (at|for)\b/i,
  /\bautoclave (at|for)\b/i,
  /\bcompatible with\b/i,
  /\bequivalent to\b/i,
  /\b(approved|cleared) (for|by)\b/i,
  /\b(gold standard|first choice|best choice)\b/i,
  /\bguarantee[sd]?\b/i,
  /\bre-?us(e|ed|able) up to\b/i,
  /\bantibiotics?\b/i,
  /\bcorrect length for\b/i,
  /\b\d+ ?(mg|ml|°C)\b/i,
];

/** No text makes a claim that belongs to instructions for use, regulators or the surgeon. */
export const noClaimIsMade: Rule = {
  id: "no-claim-is-made",
  severity: "stop",
  about: "words",
  summary:
    "No text says what a screw is indicated for, what is recommended or safe, how long bone heals, how to sterilise, or how a part behaves in a scanner.",
  why: "A card hands over instruments. Such claims belong to the instructions for use and the surgeon, and would be wrong for some patient.",
  fix: "Take the phrase out, or write: see instructions for use, with the section.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, path, text } of writtenTexts(catalogue)) {
      const claim = claims
        .map((pattern) => pattern.exec(text)?.[0])
        .find((found) => found !== undefined);
      if (claim !== undefined) yield { file, path, message: `Expected no claim, got "${claim}"` };
    }
  },
  examples: [
    {
      title: "an instruction",
      passes: true,
      shows: "Turn the sleeve in by hand until it stands square.",
      edits: [],
    },
    {
      title: "the word safety",
      passes: true,
      shows: "A safety check before the first screw is an act, no claim.",
      edits: [
        {
          file: "recipe/cortical-neutral",
          path: ["steps", 0, "say"],
          value: "Make the safety check, then hold the plate.",
        },
      ],
    },
    {
      title: "a word that only begins alike",
      passes: true,
      shows: "The indicator on the gauge is a part, no claim.",
      edits: [
        {
          file: "recipe/cortical-neutral",
          path: ["steps", 0, "say"],
          value: "Read the indicator on the gauge.",
        },
      ],
    },
    ...[
      "This plate is safe in thin bone.",
      "Recommended for short fragments.",
      "Indicated for fractures of the shaft.",
      "Contraindicated in children.",
      "The bone heals in six weeks.",
      "MR conditional.",
      "Sterilise at 134.",
      "Compatible with other makers.",
    ].map((text) => ({
      title: `the phrase "${text}"`,
      passes: false,
      shows: text,
      edits: [{ file: "recipe/cortical-neutral", path: ["steps", 0, "say"], value: text }],
    })),
  ],
};
