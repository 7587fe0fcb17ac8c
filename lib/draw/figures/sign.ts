import type { Figure } from "../../model/figure.ts";
import type { SignName } from "../../model/signs.ts";
import { drawFigure } from "../canvas.ts";
import { signParts, signSide } from "../parts/sign-parts.ts";

/** One of the marks and patterns that drawings are made of, by itself. */
export function sign(id: string, name: SignName): Figure {
  const { says, draw } = signParts[name];
  const about = { title: name, description: `Says: ${says}.`, width: signSide, height: signSide };
  const figure = drawFigure(id, about, (pen) => pen.group("sign", { data: { sign: name } }, draw));
  return { ...figure, facts: [["says", says]] };
}
