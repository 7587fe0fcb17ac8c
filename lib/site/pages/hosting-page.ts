import { definitions } from "../../model/definition.ts";
import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

const headers = [
  [
    "Content-Security-Policy",
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  ],
  ["X-Content-Type-Options", "nosniff"],
  ["Referrer-Policy", "no-referrer"],
  ["Cache-Control", "no-cache"],
] as const;

const lines = (line: (name: string, value: string) => string): string =>
  headers.map(([name, value]) => line(name, value)).join("\n");

/** The header lines as each of the common servers takes them. */
const servers = [
  ["Any server", lines((name, value) => `${name}: ${value}`)],
  ["Apache httpd, in .htaccess", lines((name, value) => `Header always set ${name} "${value}"`)],
  ["nginx, in the location", lines((name, value) => `add_header ${name} "${value}" always;`)],
  [
    "IIS, in web.config",
    `<configuration><system.webServer><httpProtocol><customHeaders>
${lines((name, value) => `  <add name="${name}" value="${value}" />`)}
</customHeaders></httpProtocol></system.webServer></configuration>`,
  ],
] as const;

/** What the librarian of a hospital must know: where to put the folder, what to send with it, how to replace it. */
export function hostingPage({ pdf }: SiteInput): Page {
  return {
    path: "hosting/index.html",
    title: "How to host this",
    titled: true,
    blocks: [
      {
        kind: "text",
        text: "Copy this folder, or what the zip holds, to any folder of a web server or shared drive. It needs no server program, no database and no log-in, and asks nothing of any other server. Opened from a drive it works as well.",
      },
      { kind: "links", links: [{ text: "Everything in one zip", to: "trayleaf-site.zip" }] },
      {
        kind: "text",
        text: "The zip does not hold itself. To keep the link above alive in an unpacked copy, lay the zip there too.",
      },
      {
        kind: "text",
        text: pdf
          ? "PDFs are in the folder pdf, packs in the folder packs."
          : "PDF not built in this preview.",
      },
      { kind: "heading", text: "Replacing an old copy", id: "replace" },
      {
        kind: "text",
        text: "Replace the whole folder; do not copy new files over old ones, or pages of withdrawn cards stay behind. Take down the printed copies of cards whose issue changed.",
      },
      { kind: "heading", text: "Header lines", id: "headers" },
      { kind: "text", text: "If your server can send header lines, send these with every page:" },
      ...servers.flatMap(([name, text]): Block[] => [
        { kind: "text", text: `${name}:` },
        { kind: "code", text },
      ]),
      { kind: "heading", text: "Schemas, for editors and other programs", id: "schemas" },
      {
        kind: "links",
        links: [...Object.keys(definitions).sort(), "check-report"].map((kind) => ({
          text: `Schema: ${kind}`,
          to: `schema/${kind}.json`,
        })),
      },
    ],
  };
}
