import type { Scene } from "./scene.ts";

/** Where the top of a seated screw's head lies on paper: level with the plate for a threaded head, a little proud for a plain one. */
export function seatedTop({ plate, parts }: Scene): number {
  return parts.screw?.head.form === "threaded" ? plate.to : plate.to + 0.7;
}
