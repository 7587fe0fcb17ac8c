import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, watch } from "node:fs";
import { createServer, type ServerResponse } from "node:http";
import { tmpdir } from "node:os";
import { extname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { BuildOptions } from "./index.ts";
import { needLibrary } from "./read/read-library.ts";

/** What is shown: a library, as of a day. */
type Shown = Pick<BuildOptions, "library" | "today">;

const root = fileURLToPath(new URL("../", import.meta.url));
const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".woff2": "font/woff2",
  ".zip": "application/zip",
};
const live = 'new EventSource("/live").onmessage = () => location.reload();\n';
const liveScript = '<script src="/live.js"></script>';
const plain = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;");

/** The path that is asked for, decoded; the start page when the address is malformed. */
function pathOf(url: string): string {
  try {
    return decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return "/";
  }
}

/** Builds the site without PDFs in a process of its own, so that changed code is read afresh; gives back what it printed. Ends when `ended` says so. */
function rebuild(
  { library, today }: Shown,
  out: string,
  ended: AbortSignal,
): Promise<{ code: number; said: string }> {
  const day = today === undefined ? [] : ["--today", today];
  const words = [join(root, "lib/setup/trayleaf.mjs"), "build", "--no-pdf"];
  return new Promise((done) => {
    const child = spawn(process.execPath, [...words, "--library", library, "--out", out, ...day], {
      env: { ...process.env, NO_COLOR: "1" },
      stdio: ["ignore", "pipe", "pipe"],
      signal: ended,
    });
    child.on("error", () => done({ code: 130, said: "" }));
    let said = "";
    for (const stream of [child.stdout, child.stderr])
      stream.on("data", (part) => {
        said += part;
      });
    child.on("close", (code) => done({ code: code ?? 70, said }));
  });
}

/** The page that stands in for every other while there is nothing to show, with the reason. */
function instead(title: string, text: string): string {
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title></head><body><h1>${title}</h1><pre>${plain(text)}</pre>${liveScript}</body></html>`;
}

/** Serves the site on this machine only; rebuilds when content, templates or lib change, and shows findings in the page. */
export async function serve(options: Shown): Promise<number> {
  needLibrary(options.library);
  const home = mkdtempSync(join(tmpdir(), "trayleaf-serve-"));
  const out = join(home, "site");
  const listeners = new Set<ServerResponse>();
  const ending = new AbortController();
  let stand = instead("Building", "The first build is under way; this page reloads by itself.");
  let running = false;
  let again = false;
  const build = async (): Promise<void> => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    do {
      again = false;
      const { code, said } = await rebuild(options, out, ending.signal);
      if (ending.signal.aborted) return;
      stand = code === 0 ? "" : instead("Nothing is shown while a stop stands", said);
      process.stdout.write(code === 0 ? "Rebuilt.\n" : said);
      for (const listener of listeners) listener.write("data: rebuilt\n\n");
    } while (again);
    running = false;
  };
  const server = createServer((request, response) => {
    const path = pathOf(request.url ?? "/");
    if (path === "/live") {
      response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
      response.flushHeaders();
      listeners.add(response);
      request.on("close", () => listeners.delete(response));
      return;
    }
    const send = (type: string, body: string | Buffer, status = 200): void => {
      response.writeHead(status, { "content-type": type, "cache-control": "no-store" });
      response.end(body);
    };
    if (path === "/live.js") return send("text/javascript", live);
    if (stand !== "") return send("text/html; charset=utf-8", stand);
    const asked = resolve(out, `.${path.endsWith("/") ? `${path}index.html` : path}`);
    const inside = !relative(out, asked).startsWith("..");
    if (!inside || !existsSync(asked) || !statSync(asked).isFile())
      return send("text/plain", "Not found", 404);
    const type = types[extname(asked)] ?? "application/octet-stream";
    const bytes = readFileSync(asked);
    send(
      type,
      type.startsWith("text/html")
        ? bytes.toString("utf8").replace("</body>", `${liveScript}</body>`)
        : bytes,
    );
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  process.stdout.write(
    `http://127.0.0.1:${typeof address === "object" ? address?.port : ""}/ — end with Ctrl+C\n`,
  );
  const watchers = [options.library, join(root, "templates"), join(root, "lib")].map((folder) => {
    let timer: NodeJS.Timeout | undefined;
    return watch(folder, { recursive: true }, () => {
      clearTimeout(timer);
      timer = setTimeout(() => void build(), 150);
    });
  });
  void build();
  await new Promise<void>((done) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => done());
  });
  for (const watcher of watchers) watcher.close();
  ending.abort();
  server.closeAllConnections();
  server.close();
  rmSync(home, { recursive: true, force: true });
  return 0;
}
