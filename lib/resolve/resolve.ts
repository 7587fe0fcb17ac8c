import type { Catalogue } from "../model/catalogue.ts";
import {
  type Defined,
  type Definitions,
  definitions as kinds,
  type Unread,
} from "../model/definition.ts";
import type { Finding } from "../model/finding.ts";
import { suggestion } from "../model/nearest-name.ts";
import type { Plate } from "../model/plate.ts";
import type { Case } from "../model/site.ts";
import { findingOf } from "../model/told-rule.ts";
import type { Tray } from "../model/tray.ts";
import { closed, type Entry, entries } from "./closed.ts";
import { caseFaults, type PlateFault, plateFaults, trayFaults } from "./plate-faults.ts";
import { type Reference, references, type Target, targets } from "./references.ts";
import { resolvingRules } from "./resolving-rules.ts";

const finding = (file: string, { rule, path, ...told }: PlateFault): Finding =>
  findingOf(resolvingRules[rule], told, { file, path });

function unknown({ path, target, id }: Reference, known: readonly string[]): PlateFault {
  return {
    rule: "exists",
    path,
    message: `Unknown ${target} "${id}"`,
    fix: suggestion(id, known),
  };
}

function own(definitions: Definitions, { kind, facts }: Entry): PlateFault[] {
  if (kind === "plate") return plateFaults(definitions, facts as Defined<Plate>);
  if (kind === "tray") return trayFaults(definitions, facts as Defined<Tray>);
  return kind === "case" ? caseFaults(definitions, facts as Defined<Case>) : [];
}

/** The references of a definition that lead nowhere; one to a refused definition is told there, not here. */
function broken(definitions: Definitions, { kind, facts }: Entry): PlateFault[] {
  const lists = new Map<Target, readonly string[]>();
  const list = (target: Target): readonly string[] => {
    const known = lists.get(target) ?? targets(definitions, target);
    lists.set(target, known);
    return known;
  };
  const refused = ({ target, id }: Reference): boolean => {
    if (target === "plate family")
      return [...definitions.refused.values()].some((one) => one.kind === "plate");
    const owner =
      target === "head thread" || target === "drive" || target === "coupling"
        ? "interfaces/interfaces"
        : `${target}/${id}`;
    return definitions.refused.has(owner);
  };
  const lost = references(kind, facts).filter(({ target, id }) => !list(target).includes(id));
  return lost.filter((one) => !refused(one)).map((one) => unknown(one, list(one.target)));
}

function catalogueOf(definitions: Definitions): Catalogue | undefined {
  const [publisher] = definitions.publisher.values();
  const [interfaces] = definitions.interfaces.values();
  if (!publisher || !interfaces) return undefined;
  const {
    system,
    document,
    caution,
    mishap,
    recipe,
    term,
    site,
    case: plans,
    "sign-off": signOffs,
    zone,
    opening,
    screw,
    instrument,
    plate,
    tray,
    procedure,
  } = definitions;
  return {
    publisher,
    interfaces,
    systems: system,
    documents: document,
    cautions: caution,
    mishaps: mishap,
    recipes: recipe,
    terms: term,
    sites: site,
    cases: plans,
    signOffs,
    zones: zone,
    openings: opening,
    screws: screw,
    instruments: instrument,
    plates: plate,
    trays: tray,
    procedures: procedure,
  };
}

function systemsWithoutFile(definitions: Definitions): Finding[] {
  const used = new Set(
    entries(definitions)
      .filter(({ kind, facts }) => kinds[kind].scope === "system" && facts.system !== "general")
      .map(({ facts }) => facts.system),
  );
  const lost = [...used].filter(
    (system) => !definitions.system.has(system) && !definitions.refused.has(`system/${system}`),
  );
  return lost.map((system) =>
    finding(`systems/${system}/system.yaml`, {
      rule: "single",
      path: [],
      message: `Missing file "systems/${system}/system.yaml"`,
      fix: `Write the file: trayleaf new system ${system}.`,
    }),
  );
}

/** What was refused, what is bad in itself, and what lost something to either. */
function unreadOf(
  definitions: Definitions,
  bad: ReadonlySet<string>,
  incomplete: ReadonlySet<string>,
): readonly Unread[] {
  const short = entries(definitions).filter(
    ({ kind, facts }) => bad.has(`${kind}/${facts.id}`) || incomplete.has(facts.file),
  );
  return [
    ...definitions.refused.values(),
    ...short.map(({ kind, facts }) => ({
      kind,
      system: facts.system,
      ...("kind" in facts ? { sort: facts.kind } : {}),
    })),
  ];
}

/** Joins definitions by their ids. The catalogue holds what holds together, each map in id order; it is absent without publisher or registry.
 * `incomplete` names the files that lost something to a fault elsewhere: what they state as a whole cannot be judged.
 * `unread` tells what is missing or short for such a reason: that there is no more of its kind cannot be said. */
export function resolve(definitions: Definitions): {
  catalogue?: Catalogue;
  findings: Finding[];
  incomplete: ReadonlySet<string>;
  unread: readonly Unread[];
} {
  const findings: Finding[] = [];
  const bad = new Set<string>();
  for (const kind of ["publisher", "interfaces"] as const) {
    const isThere = definitions[kind].size > 0 || definitions.refused.has(`${kind}/${kind}`);
    if (!isThere)
      findings.push(
        finding(kinds[kind].folder, {
          rule: "single",
          path: [],
          message: `Missing file "${kinds[kind].folder}"`,
        }),
      );
  }
  findings.push(...systemsWithoutFile(definitions));
  for (const entry of entries(definitions)) {
    const faults = own(definitions, entry);
    findings.push(
      ...[...broken(definitions, entry), ...faults].map((fault) =>
        finding(entry.facts.file, fault),
      ),
    );
    if (faults.length > 0 && entry.kind !== "case") bad.add(`${entry.kind}/${entry.facts.id}`);
  }
  const left = closed(definitions, bad);
  const catalogue = catalogueOf(left.definitions);
  const { incomplete } = left;
  const unread = unreadOf(definitions, bad, incomplete);
  return { ...(catalogue ? { catalogue } : {}), findings, incomplete, unread };
}
