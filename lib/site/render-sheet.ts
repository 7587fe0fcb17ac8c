import type { SheetView } from "../model/sheet.ts";
import { templateEnvironment } from "./nunjucks.ts";

const environment = templateEnvironment();

/** One sheet as the `<article class="sheet …">` fragment that the site shows and the printer prints. */
export function renderSheet(sheet: SheetView): string {
  return environment.render(`sheets/${sheet.kind}.njk`, sheet);
}
