import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

// A program of its own: the package reads its environment when it is loaded. Prints the executable's path.
const from = createRequire(join(process.argv[2] ?? "", "package.json"));
const { default: chromium } = await import(pathToFileURL(from.resolve("@sparticuz/chromium")).href);
process.stdout.write(`${await chromium.executablePath()}\n`);
