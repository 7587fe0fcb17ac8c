import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { createServer, type Server } from "node:http";
import { tmpdir } from "node:os";
import { dirname, extname, join } from "node:path";
import { unzipSync } from "fflate";
import type { Browser } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { filesBelow } from "../../lib/publish/manifest.ts";
import { builtSite } from "./built-site.ts";
import { openTab, testBrowser } from "./open-tab.ts";
import { pageKinds } from "./page-kinds.ts";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
};
const root = mkdtempSync(join(tmpdir(), "trayleaf-hosted-"));
const below = "library/theatre cards";
let browser: Browser;
let server: Server;
let home: string;
let headers: Readonly<Record<string, string>>;

/** The header lines that the page for librarians names. */
function namedHeaders(folder: string): Readonly<Record<string, string>> {
  const page = readFileSync(join(folder, "hosting/index.html"), "utf8");
  const told = /<pre[^>]*><code>([^<]*)</.exec(page)?.[1] ?? "";
  const lines = told.replaceAll("&#39;", "'").split("\n");
  return Object.fromEntries(
    lines.map((line) => [line.split(": ")[0] ?? "", line.slice(line.indexOf(": ") + 2)]),
  );
}

beforeAll(async () => {
  const built = await builtSite();
  const folder = join(root, below);
  for (const [file, bytes] of Object.entries(
    unzipSync(readFileSync(join(built, "trayleaf-site.zip"))),
  )) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), bytes);
  }
  headers = namedHeaders(folder);
  server = createServer((request, response) => {
    const path = join(root, decodeURIComponent(new URL(request.url ?? "/", "http://x").pathname));
    if (!existsSync(path) || !statSync(path).isFile()) return void response.writeHead(404).end();
    const type = types[extname(path)] ?? "application/octet-stream";
    response.writeHead(200, { ...headers, "content-type": type }).end(readFileSync(path));
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  const port = typeof address === "object" ? address?.port : undefined;
  home = `http://127.0.0.1:${port}/${encodeURI(below)}`;
  browser = await testBrowser();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  server.closeAllConnections();
  server.close();
  rmSync(root, { recursive: true, force: true });
});

describe("the zip unpacked in a sub-folder of a web server", () => {
  it("holds every file of the site but itself", async () => {
    const all = filesBelow(await builtSite()).filter((file) => file !== "trayleaf-site.zip");
    expect(filesBelow(join(root, below))).toEqual(all);
  });

  it("is sent with the header lines that the page for librarians names", () => {
    expect(Object.keys(headers)).toContain("Content-Security-Policy");
    expect(headers["Content-Security-Policy"]).toContain("default-src 'none'");
  });

  it.each(pageKinds.filter((_, at) => at % 5 === 0))(
    "shows %s quietly",
    async (path) => {
      const { tab, noise } = await openTab(browser, home, 1024);
      const answer = await tab.goto(`${home}/${path}`);
      expect({ status: answer?.status(), noise }).toEqual({ status: 200, noise: [] });
      await tab.close();
    },
    30_000,
  );
});
