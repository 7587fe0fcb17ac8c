import type { OpeningKind } from "../../model/zone.ts";
import type { HolePart } from "./hole-part.ts";
import { combined } from "./holes/combined.ts";
import { plainOblong } from "./holes/plain-oblong.ts";
import { plainRound } from "./holes/plain-round.ts";
import { suture } from "./holes/suture.ts";
import { threaded } from "./holes/threaded.ts";
import { wire } from "./holes/wire.ts";

/** The drawn part of every kind of hole. */
export const holeParts: { readonly [K in OpeningKind]: HolePart } = {
  threaded,
  "plain-round": plainRound,
  "plain-oblong": plainOblong,
  combined,
  wire,
  suture,
};
