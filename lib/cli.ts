import { createHash } from "node:crypto";
import { Command, CommanderError, InvalidArgumentError, Option } from "commander";
import { type DefinitionKind, definitions } from "./model/definition.ts";
import { refuses } from "./model/finding.ts";
import { suggestion } from "./model/nearest-name.ts";
import { Stop } from "./model/stop.ts";
import type { MutateOptions } from "./mutate.ts";

type Shared = {
  readonly library: string;
  readonly out: string;
  readonly today?: string;
  readonly format: "text" | "json";
  readonly pdf: boolean;
};

const examples = `
Examples:
  trayleaf check                                 judge the library in ./content
  trayleaf check --library ours --format json    judge another, for another program
  trayleaf build --out public --no-pdf           make the site without PDFs
  trayleaf explain sleeve-guides-the-drill       why a rule is there and how to satisfy it
  trayleaf new zone oblong-27 --system pebblefin a commented file to start from

Exit codes: 0 done, 1 content refused, 2 wrong use, 3 something on this computer is missing,
4 another build is running, 5 what was made did not verify, 70 our own fault.`;

function day(text: string): string {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text) || Number.isNaN(Date.parse(text)))
    throw new InvalidArgumentError("Expected a date as YYYY-MM-DD.");
  return text;
}

/** The day to print, when one was given: the option, else SOURCE_DATE_EPOCH (seconds, UTC). */
function givenDay(option: string | undefined): string | undefined {
  const epoch = process.env["SOURCE_DATE_EPOCH"];
  if (option !== undefined || epoch === undefined) return option;
  if (!/^\d{1,11}$/.test(epoch))
    throw new Stop(
      2,
      `Expected SOURCE_DATE_EPOCH in whole seconds, got "${epoch}".`,
      "Unset it, or set it to seconds since 1970.",
    );
  return new Date(Number(epoch) * 1000).toISOString().slice(0, 10);
}

const useColour = (): boolean => process.stdout.isTTY === true && !process.env["NO_COLOR"];
const option = {
  library: () => new Option("--library <folder>", "the library to read").default("content"),
  out: () => new Option("--out <folder>", "the folder to write").default("dist"),
  built: () => new Option("--out <folder>", "the folder a build writes").default("dist"),
  today: () =>
    new Option(
      "--today <date>",
      "the day to print and to judge dates by; else SOURCE_DATE_EPOCH, else the newest card's date",
    ).argParser(day),
  format: () =>
    new Option("--format <format>", "how findings are printed")
      .choices(["text", "json"])
      .default("text"),
  noPdf: () => new Option("--no-pdf", "make no PDFs"),
} as const;

async function checkCommand({ library, today, format }: Shared): Promise<number> {
  const { checkLibrary } = await import("./index.ts");
  const { reportText } = await import("./report/report-text.ts");
  const { reportJson } = await import("./report/report-json.ts");
  const { locate, findings, waiting } = checkLibrary(library, givenDay(today));
  const located = findings.map(locate);
  const name = library.replace(/[/\\]+$/, "");
  process.stdout.write(
    format === "json"
      ? reportJson(located, name, waiting)
      : reportText(located, { library: name, colour: useColour(), waiting }),
  );
  return findings.some(refuses) ? 1 : 0;
}

async function newCommand(
  kind: string,
  id: string | undefined,
  { library, out, system, sort }: Shared & { system?: string; sort?: string },
): Promise<number> {
  const { beginDefinition } = await import("./begin/begin-definition.ts");
  if (!Object.hasOwn(definitions, kind))
    throw new Stop(
      2,
      `Unknown kind "${kind}".`,
      suggestion(kind, Object.keys(definitions), "kinds"),
    );
  const known = kind as DefinitionKind;
  if (id === undefined && definitions[known].scope !== "single")
    throw new Stop(
      2,
      `Missing id: trayleaf new ${kind} <id>.`,
      "The id becomes the file's name: a-z, 0-9 and single hyphens.",
    );
  const file = beginDefinition({
    library,
    out,
    kind: known,
    id: id ?? kind,
    ...(system === undefined ? {} : { system }),
    ...(sort === undefined ? {} : { sort }),
  });
  process.stdout.write(`Wrote ${file}. Fill it in, then: trayleaf check --library ${library}\n`);
  return 0;
}

/** The command line; each command hands its exit code to `ends`. */
function program(ends: (code: number) => void): Command {
  const root = new Command("trayleaf")
    .description(
      "Facts about single surgical-plating parts in, printable one-page instrument cards out.",
    )
    .addHelpText("after", examples)
    .showHelpAfterError("(trayleaf --help shows how)")
    .exitOverride();
  const command = (
    text: string,
    description: string,
    ...takes: readonly (keyof typeof option)[]
  ): Command => {
    const made = root.command(text).description(description).exitOverride();
    for (const name of takes) made.addOption(option[name]());
    return made;
  };
  command(
    "check",
    "read the library and name all that is wrong with it",
    "library",
    "today",
    "format",
  ).action(async (given: Shared) => ends(await checkCommand(given)));
  command(
    "build",
    "make the site and the PDFs from a library without stops",
    "library",
    "out",
    "today",
    "format",
    "noPdf",
  ).action(async ({ library, out, today, format, pdf }: Shared) => {
    const { build } = await import("./build.ts");
    ends(
      await build({
        library,
        out,
        today: givenDay(today),
        format,
        pdf,
        colour: useColour(),
      }),
    );
  });
  command("serve", "show the site and rebuild it when a file changes", "library", "today").action(
    async ({ library, today }: Pick<Shared, "library" | "today">) => {
      const { serve } = await import("./serve.ts");
      ends(await serve({ library, today: givenDay(today) }));
    },
  );
  command("mutate", "change one fact at a time and count what the rules catch", "library", "today")
    .option("--sample <n>", "judge every n-th mutant of a kind only", Number, 1)
    .option("--survivors", "name each harmful mutant that nothing caught")
    .option("--keep <file>", "keep the counts in a file, for the site to show")
    .addOption(new Option("--share <n>").hideHelp())
    .action(async (given: MutateOptions) => {
      const { mutate } = await import("./mutate.ts");
      ends(
        await mutate({
          ...given,
          survivors: given.survivors === true,
          today: givenDay(given.today),
        }),
      );
    });
  command("explain", "explain one rule, or list them all")
    .argument("[rule]", "the id printed in brackets behind a finding")
    .action(async (id?: string) => {
      const { explain } = await import("./explain.ts");
      ends(explain(id));
    });
  command("new", "write a commented definition to start from", "library", "built")
    .argument("<kind>", `one of: ${Object.keys(definitions).join(", ")}`)
    .argument("[id]", "its id: a-z, 0-9 and single hyphens")
    .option("--system <id>", "the system it belongs to, or general")
    .option("--sort <sort>", "which sort, as drill for an instrument or plain-round for a zone")
    .action(async (kind: string, id: string | undefined, given: Shared) =>
      ends(await newCommand(kind, id, given)),
    );
  return root;
}

function ourFault(error: unknown): number {
  const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const id = createHash("sha256")
    .update(stack.replace(/\(?(file:\/\/)?\/[^\s)]*\//g, ""))
    .digest("hex")
    .slice(0, 8);
  const message = error instanceof Error ? error.message.split("\n")[0] : String(error);
  process.stderr.write(
    `Our own fault, please report it with the id ${id}: ${message} (TRAYLEAF_DEBUG=1 shows where)\n`,
  );
  if (process.env["TRAYLEAF_DEBUG"] === "1") process.stderr.write(`${stack}\n`);
  return 70;
}

/** Runs one command line (without node and script) and returns its exit code; prints one line for what went wrong. */
export async function run(words: readonly string[]): Promise<number> {
  let code = 0;
  try {
    await program((ended) => {
      code = ended;
    }).parseAsync([...words], { from: "user" });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof Stop)) return ourFault(error);
    process.stderr.write(`${error.message} ${error.fix}\n`);
    return error.exit;
  }
}

process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});
process.exitCode = await run(process.argv.slice(2));
