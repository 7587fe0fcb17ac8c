/** The marks and patterns that drawings are made of besides metal and holes. */
export const signNames = [
  "arrow",
  "turning arrow",
  "right angle",
  "limiter's signal",
  "box to tick",
  "ticked box",
  "look-alike strip",
  "cortex",
  "bone within",
  "metal",
  "measured size",
  "hidden edge",
  "centre line",
] as const;
export type SignName = (typeof signNames)[number];
