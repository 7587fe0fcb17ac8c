import type { ToldRule } from "../model/told-rule.ts";

const rule = (
  id: string,
  summary: string,
  why: string,
  fix: string,
  passes: string,
  fails: string,
): ToldRule => ({
  id,
  severity: "stop",
  about: "reading",
  summary,
  why,
  fix,
  source: "common practice",
  examples: [
    { title: "accepted", passes: true, shows: passes },
    { title: "refused", passes: false, shows: fails },
  ],
});

/** Every rule that validating looks after: one definition's keys and values, by themselves. */
export const validatingRules = {
  keyKnown: rule(
    "key-is-known",
    "Every key is one the kind of definition has.",
    "A misspelt key would be left out of the cards in silence.",
    "Correct the key, or delete it.",
    "bore: 2.9",
    "boar: 2.9",
  ),
  keyPresent: rule(
    "key-is-present",
    "Every key a definition needs is there.",
    "A card would have a blank where the reader looks.",
    "Add the key.",
    "A drill with diameter.",
    "A drill without diameter.",
  ),
  choiceKnown: rule(
    "choice-is-known",
    "A word that must be one of a few is one of them.",
    "The card would show a thing that its legend does not explain.",
    "Write one of the known words.",
    "kind: plain-oblong",
    "kind: plain-oblng",
  ),
  type: rule(
    "value-has-its-type",
    "A number stands where a number belongs, text where text belongs.",
    "Units are fixed, so a value with a unit of its own could be taken for ten times what it is.",
    "Write the value as the message says.",
    "major: 3.5",
    "major: 3.5 cm",
  ),
  range: rule(
    "number-is-in-its-range",
    "Every number lies in the range that is plausible for its field.",
    "A slipped decimal point or an inch size would pass for a millimetre size.",
    "Check the number and its unit with the source.",
    "major: 3.5",
    "major: 35",
  ),
  count: rule(
    "list-has-its-length",
    "A list has as many entries as its field takes.",
    "What does not fit on a card would have to be left out of it.",
    "Add or take out entries.",
    "cautions with 3 entries.",
    "cautions with 20 entries.",
  ),
  textLength: rule(
    "text-fits-its-field",
    "A text is neither empty nor longer than its field takes.",
    "Text is never shrunk or cut to fit a card.",
    "Write it shorter, or write it at all.",
    'name: "drill 2.5"',
    'name: ""',
  ),
  textForm: rule(
    "text-has-its-form",
    "An id, a date or a label has the form of its kind.",
    "Ids become file names and labels are read aloud: both must be plain.",
    "Write it in the form the message names.",
    "document: pebblefin-ifu",
    "document: ../ifu",
  ),
  idForm: rule(
    "id-is-its-file-name",
    "A file's name is its id: a-z, 0-9 and single hyphens, at most 64, no device name.",
    "Ids become the names of pages and cards on any computer.",
    "Rename the file.",
    "zones/oblong-35.yaml",
    "zones/Oblong 3.5.yaml",
  ),
  idUnique: rule(
    "id-is-unique",
    "An id stands once for its kind in the whole library.",
    "A card could show the one and mean the other.",
    "Rename one of the files.",
    "drill-25 in one system.",
    "drill-25 in two systems.",
  ),
} as const satisfies Record<string, ToldRule>;
export type ValidatingRule = keyof typeof validatingRules;
