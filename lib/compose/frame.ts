import { known } from "../model/catalogue.ts";
import type { Format, FormatKind } from "../model/format.ts";
import type { CautionView, IdentityView, SheetFrame } from "../model/sheet-frame.ts";
import { readingDistance } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { formatsFor } from "./formats.ts";
import { signedViews } from "./signed-views.ts";

/** What a sheet says of itself before its body is composed. */
export type FrameFacts = {
  readonly id: string;
  readonly system: string;
  readonly title: string;
  readonly lead: string;
  readonly cautions: readonly string[];
  readonly origin: string;
  readonly kind: FormatKind;
  /** What the body shows: "chain/<id>", "screw/<id>", "plate/<laid plate>", "tray/…", "case/…", "procedure/…", "recipe/…". */
  readonly shows: readonly string[];
  /** True where anything is drawn at true size. */
  readonly trueSize: boolean;
  /** Documents the sheet's numbers come from; without it, the system's own. */
  readonly documents?: readonly string[];
};

/** Cautions as printed, each once, in the order given. */
export function cautionViews(
  { catalogue }: Composing,
  ids: readonly string[],
): readonly CautionView[] {
  return [...new Set(ids)].map((id) => {
    const { signal, text } = known(catalogue.cautions, id);
    return { id, signal, text };
  });
}

type Issued = {
  readonly name: string;
  readonly generation: string;
  readonly prefix: string;
  readonly issue: string;
  readonly date: string;
  readonly reviewBy: string;
  readonly trayRevision: string;
  readonly documents: readonly string[];
};

function issuedBy({ catalogue }: Composing, system: string): Issued {
  const own = catalogue.systems.get(system);
  if (own) {
    const { cards } = own;
    const generation = `Generation ${own.generation}. ${own.generation_mark}`;
    return {
      name: own.name,
      generation,
      prefix: cards.prefix,
      issue: cards.issue,
      date: cards.date,
      reviewBy: cards.review_by,
      trayRevision: own.tray_revision,
      documents: own.documents,
    };
  }
  const all = [...catalogue.systems.values()];
  const text = (values: readonly string[]): readonly string[] => [...values].sort();
  return {
    name: "General instruments",
    generation: "For every system of this library.",
    prefix: "GENERAL",
    issue: text(all.map(({ cards }) => cards.issue)).at(-1) ?? "A",
    date: text(all.map(({ cards }) => cards.date)).at(-1) ?? "",
    reviewBy: text(all.map(({ cards }) => cards.review_by))[0] ?? "",
    trayRevision: "see tray",
    documents: [],
  };
}

function sourceLine({ catalogue }: Composing, ids: readonly string[]): string {
  const words = ids.map((id) => {
    const { title, issue, date } = known(catalogue.documents, id);
    return `${title}, issue ${issue}, ${date}`;
  });
  return words.length === 0 ? "Sources: as each part states" : `Sources: ${words.join("; ")}`;
}

/** What all sheets share, for each format in turn; the fingerprint is put in when the view is whole. */
export function frames(composing: Composing, facts: FrameFacts): readonly SheetFrame[] {
  const { catalogue, pictures } = composing;
  const { publisher } = catalogue;
  const issued = issuedBy(composing, facts.system);
  const formats = formatsFor(composing, facts.system, facts.kind);
  const slug = facts.id.startsWith(`${facts.system}-`)
    ? facts.id.slice(facts.system.length + 1)
    : facts.id;
  const documents = facts.documents ?? issued.documents;
  const identity: IdentityView = {
    card: `${issued.prefix}-${slug}`,
    issue: `issue ${issued.issue}`,
    date: issued.date,
    trayRevision: `tray revision ${issued.trayRevision}`,
    reviewBy: `review by ${issued.reviewBy}`,
    page: "page 1 of 1",
    distance: "",
    language: publisher.language,
    fingerprint: "",
    sources: sourceLine(composing, documents),
  };
  const signed = signedViews(composing, facts);
  const frame = {
    id: facts.id,
    system: facts.system,
    systemName: issued.name,
    formats: formats.map((format) => format.id),
    title: facts.title,
    lead: facts.lead,
    generation: issued.generation,
    banner: publisher.demo ? (publisher.banner ?? "Invented data. Not for clinical use.") : "",
    logo: publisher.logo_text,
    ask: `Ask: ${publisher.ask.role}, ${publisher.ask.telephone}`,
    defer: publisher.defer,
    identity,
    cautions: cautionViews(composing, facts.cautions),
    signed,
    ...(facts.trueSize ? { scaleBar: pictures.scaleBar(`${facts.id}-bar`) } : {}),
    origin: facts.origin,
    shows: [
      ...facts.shows,
      ...facts.cautions.map((id) => `caution/${id}`),
      ...signed.map(({ id }) => `sign-off/${id}`),
      ...documents.map((id) => `document/${id}`),
    ],
  };
  const reads = (format: Format): string => {
    const cm = readingDistance(facts.kind, format) / 10;
    const paper = format.name.replace(/ (landscape|portrait)$/, "");
    return cm < 100 ? `${paper}, for ${cm} cm` : `${paper}, for ${cm / 100} m`;
  };
  return formats.map((format) => ({
    ...frame,
    format,
    identity: { ...identity, distance: reads(format) },
  }));
}
