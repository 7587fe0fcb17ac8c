import { refusal, type ToldRule } from "../model/told-rule.ts";

/** Every rule that resolving looks after: what one definition says of another. */
export const resolvingRules = {
  exists: refusal(
    "reference-exists",
    "Every id that a definition names is the id of a definition.",
    "A card would leave out a part, a caution or a source without a word.",
    "Correct the id, or add the definition.",
    "permits: [cortical-35], and screws/cortical-35.yaml is there.",
    "permits: [cortical-53], and there is no such screw.",
  ),
  label: refusal(
    "hole-label-exists",
    "Every hole label is a hole of that plate in that length.",
    "Nobody at the table could find the hole.",
    "Correct the label or the length variant.",
    "Hole S4 of a plate with 6 holes in its row.",
    "Hole S9 of a plate with 6 holes in its row.",
  ),
  variant: refusal(
    "length-variant-exists",
    "Every length variant that is named is one the plate comes in.",
    "The plate could not be found in the tray.",
    "Correct the number of holes.",
    "holes: 6, and the plate comes with 4, 6 and 8.",
    "holes: 7, and the plate comes with 4, 6 and 8.",
  ),
  zoneOfHole: refusal(
    "zone-lies-in-its-hole",
    "The zone a screw is planned through is one of the hole's.",
    "The chain of instruments would be another hole's.",
    "Name a zone of the hole's opening.",
    "Threaded part of a combined opening.",
    "Threaded part of a wire hole.",
  ),
  mirror: refusal(
    "mirrored-plate-has-the-other-side",
    "A mirrored plate is the other side of a drawn plate.",
    "Two plates would claim one side, or a plate without sides would get one.",
    "Correct side or mirror_of.",
    "right, mirror of a left plate.",
    "left, mirror of a left plate.",
  ),
  single: refusal(
    "library-has-its-single-files",
    "A library has one publisher.yaml and one interfaces.yaml, each system one system.yaml.",
    "Every card names who publishes it, and every part shares its threads, drives and couplings.",
    "Write the file: trayleaf new publisher, trayleaf new interfaces.",
    "content/publisher.yaml is there.",
    "content/publisher.yaml is missing.",
  ),
} as const satisfies Record<string, ToldRule>;
export type ResolvingRule = keyof typeof resolvingRules;
