import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { Stop } from "../model/stop.ts";

/** The sheets' styles with every font inside as a data: URL. `styles` is templates/style, `fonts` the folder of the font files. */
export function printStyles(styles: string, fonts: string): string {
  const faces = readFileSync(join(styles, "fonts.css"), "utf8").replace(
    /url\("([^"]+\.woff2)"\)/g,
    (_, url: string) => {
      try {
        return `url(data:font/woff2;base64,${readFileSync(join(fonts, basename(url))).toString("base64")})`;
      } catch {
        throw new Stop(3, `The font ${basename(url)} is missing.`, "Run npm ci again.");
      }
    },
  );
  const sheets = ["sheet.css", "fit.css", "pack.css"].map((file) =>
    readFileSync(join(styles, file), "utf8"),
  );
  return [faces, ...sheets].join("\n");
}
