/** How much each thing that two parts share makes them look alike; the weights add up to 1. */
export const lookWeights = {
  /** Of one kind: both are drills, and a hand reaches for "the drill". */
  kind: 0.25,
  /** As wide: 0.2 mm of width is not seen at arm's length. */
  size: 0.25,
  /** As long: the silhouette is what the eye takes in first. */
  length: 0.15,
  /** One mark: whoever reads it reads the same. */
  mark: 0.15,
  /** One sign to look at (rings, thread, head): nothing else tells them apart. */
  sign: 0.15,
  /** One coupling: the wrong one goes on. */
  joint: 0.05,
} as const;

/** Widths this near, micrometres, are one width to the eye. */
export const unseen = 300;

/** Widths and lengths a quarter apart or more no longer look alike. */
export const apart = 0.25;

/** How likely the two are taken for one another, by where they lie. */
export const exposure = {
  /** In slots that touch: one grip of the hand. */
  adjacent: 1,
  /** In one tray: both are seen at once. */
  tray: 0.8,
  /** In trays that stand in one room. */
  room: 0.5,
} as const;

/** What follows when the wrong one is used. */
export const consequence = {
  /** The screw holds less, or is torn. */
  hold: 1,
  /** The step is done again. */
  rework: 0.7,
  /** Something else is fetched. */
  delay: 0.4,
} as const;

/** A glance tells the two apart: by their length, or by the form of the head. */
export const glance = 0.7;

/** It does not go in at all where the other belongs: it is noticed at once. */
export const unusable = 0.3;
