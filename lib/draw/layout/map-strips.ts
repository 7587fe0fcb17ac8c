/** Strips of words above and below a plate, millimetres high. A wide figure has one strip only, with the scale in it. */
export type MapStrips = {
  readonly above: number;
  readonly below: number;
  readonly compact: boolean;
};

/** The strips of a map of the given width (mm). */
export function mapStrips(width: number): MapStrips {
  const compact = width >= 160;
  return { above: 7, below: compact ? 0 : 6, compact };
}
