import { type MutationRun, mutantKinds, type Outcome } from "../model/mutation.ts";
import { mutationSums, percent } from "../model/mutation-sums.ts";

const columns = ["mutants", "refused", "by rules", "harmful", "caught", "unknowable"] as const;

function line(title: string, numbers: readonly (string | number)[]): string {
  return `${title.padEnd(34)}${numbers.map((one) => String(one).padStart(11)).join("")}`;
}

/** The survivors of a run, a line each: file, path and what was changed. */
export function survivorLines(survivors: readonly Outcome[]): readonly string[] {
  return survivors.map(
    ({ mutant: { file, path, kind, says } }) =>
      `survives: ${file} ${path.join(".")}: ${says} (${mutantKinds[kind].title})`,
  );
}

/** A run as a table with a row for each kind, its two goals with their denominators, and one last line of JSON. */
export function mutationText(run: MutationRun): string {
  const sums = mutationSums(run);
  const declared = run.unknowable.map(
    ({ what, why, mutants }) => `unknowable (${mutants}): ${what}: ${why}`,
  );
  return [
    line("", columns),
    ...run.rows.map((row) =>
      line(mutantKinds[row.kind].title, [
        row.mutants,
        row.refused,
        row.caught,
        row.harmful,
        `${row.harmfulCaught}`,
        row.unknowable,
      ]),
    ),
    ...declared,
    `Unit slips caught: ${sums.unit_slips_caught} of ${sums.unit_slips}, ${percent(sums.unit_slips_caught, sums.unit_slips)} % (${sums.unit_slips_refused} of them refused by a schema).`,
    `Harmful mutants that passed the schemas and could be known, caught by rules: ${sums.harmful_caught} of ${sums.harmful}, ${percent(sums.harmful_caught, sums.harmful)} %.`,
    JSON.stringify(sums),
    "",
  ].join("\n");
}
