import { encode } from "uqr";
import type { Figure } from "../../model/figure.ts";
import { drawFigure, type PathPiece } from "../canvas.ts";

/** The side of every code, mm; with up to 77 capitals and figures a module is 0.34 mm or more. */
const side = 10;

/** The dark runs of one row as rectangles, mm. */
function rowPieces(row: readonly boolean[], top: number, module: number): readonly PathPiece[] {
  return row.flatMap((dark, column): readonly PathPiece[] => {
    if (!dark || row[column - 1] === true) return [];
    const end = row.indexOf(false, column);
    const [left, right] = [column * module, (end === -1 ? row.length : end) * module];
    return [
      ["M", left, top],
      ["L", right, top],
      ["L", right, top + module],
      ["L", left, top + module],
      ["Z"],
    ];
  });
}

/** A QR code (ISO/IEC 18004, level L or better), 10 mm wide, that says `text`. The paper around it is its quiet zone. */
export function cardCode(id: string, text: string): Figure {
  const { data, size } = encode(text, { ecc: "L", boostEcc: true, border: 0 });
  const module = side / size;
  return drawFigure(
    id,
    {
      title: "Card code",
      description: `A square code that reads ${text}.`,
      width: side,
      height: side,
    },
    (pen) => {
      pen.path(
        data.flatMap((row, index) => rowPieces(row, index * module, module)),
        { fill: "ink", stroke: "none", data: { part: "card-code" } },
      );
    },
  );
}
