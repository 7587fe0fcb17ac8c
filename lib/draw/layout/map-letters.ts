import { apartSizes } from "../tokens.ts";

const size = apartSizes.label;

/** Lettering of plate maps, millimetres: capitals 3.2 high, the height of a whole line as browsers box it, the ring and the numbered disc of a marked hole; `note` sets the scale, the names of regions and thicknesses. */
export const mapLetters = {
  size,
  note: apartSizes.note,
  ascent: size * 0.984 + 0.12,
  height: size * 1.3 + 0.25,
  ring: 1.2,
  line: 0.35,
  badge: 4.6,
  pad: 0.8,
} as const;
