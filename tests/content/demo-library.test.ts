import { describe, expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { derive } from "../../lib/derive/derive.ts";
import { loadLibrary } from "../../lib/index.ts";
import { verbs } from "../../lib/model/recipe.ts";

const { catalogue, findings } = loadLibrary("content");
if (catalogue === undefined) throw new Error("The demo library does not resolve");
const derived = derive(catalogue);

describe("the demo library", () => {
  it("is read, validated and resolved without a finding", () => {
    expect(findings).toEqual([]);
  });

  it("leaves no chain with no candidate or with two", () => {
    expect(derived.gaps).toEqual([]);
    expect(derived.chains).toHaveLength(24);
  });

  it("lets the rules stop nothing, and tell only what is meant to be told or was signed", () => {
    const told = check({ catalogue, derived, today: "2026-10-02" });
    expect(
      told.map(({ severity, rule, place, signed }) =>
        [signed ? `signed by ${signed.role}` : severity, rule, place.file].join(" | "),
      ),
    ).toEqual([
      "note | site-holds-the-case | cases/case-a.yaml",
      "note | site-holds-the-case | cases/case-a.yaml",
      "signed by Instrument educator | case-sheet-expires | cases/case-c.yaml",
      "signed by Instrument educator | rack-covers-the-plan | cases/case-c.yaml",
      "signed by Instrument educator | rack-covers-the-plan | cases/case-c.yaml",
      "signed by Theatre store lead | every-length-is-in-stock | sites/brackenhollow-general.yaml",
      "signed by Implant design lead | pilot-suits-the-core | systems/gatepost/screws/locking-50.yaml",
      "note | every-part-is-used | systems/pebblefin/instruments/countersink-35.yaml",
      "signed by Implant design lead | look-alike-plates-are-signed | systems/pebblefin/plates/straight-stiff.yaml",
    ]);
  });

  it.each([
    ["locking-35", "oblong-35"],
    ["cortical-35", "threaded-35"],
  ])("lists screw %s in zone %s among the traps of the combined opening", (screw, zone) => {
    const trap = derived.screwTraps.find((entry) => entry.screw === screw && entry.zone === zone);
    expect(trap?.head).toBe("lodges");
  });

  it("has every kind of hole, every technique's verbs and every kind of instrument", () => {
    const zones = new Set([...catalogue.zones.values()].map(({ kind }) => kind));
    expect([...zones].sort()).toEqual([
      "plain-oblong",
      "plain-round",
      "suture",
      "threaded",
      "wire",
    ]);
    const used = new Set(
      [...catalogue.recipes.values(), ...catalogue.procedures.values()].flatMap(({ steps }) =>
        steps.map(({ verb }) => verb),
      ),
    );
    expect(verbs.filter((verb) => !used.has(verb))).toEqual(["countersink"]);
    expect(new Set([...catalogue.instruments.values()].map(({ kind }) => kind)).size).toBe(14);
  });

  it("lays out at least 24 plates, sides and length variants", () => {
    expect(derived.plates.length).toBeGreaterThanOrEqual(24);
  });

  it("prints every caution somewhere", () => {
    const printed = new Set(
      [...catalogue.recipes.values(), ...catalogue.procedures.values()].flatMap(
        ({ steps, cautions, required_cautions }) => [
          ...cautions,
          ...required_cautions,
          ...steps.flatMap((step) => step.cautions),
        ],
      ),
    );
    expect([...catalogue.cautions.keys()].filter((id) => !printed.has(id))).toEqual([]);
  });

  it("lays each instrument in one slot that is longer than it", () => {
    const slots = [...catalogue.trays.values()].flatMap((tray) =>
      tray.slots.flatMap((slot) =>
        slot.holds === "instrument"
          ? [
              {
                instrument: slot.instrument,
                long: (slot.span[0] * tray.size.width) / tray.grid.columns,
              },
            ]
          : [],
      ),
    );
    expect(slots.map(({ instrument }) => instrument).sort()).toEqual(
      [...catalogue.instruments.keys()].sort(),
    );
    expect(
      slots.filter(
        ({ instrument, long }) => (catalogue.instruments.get(instrument)?.length ?? 0) >= long,
      ),
    ).toEqual([]);
  });

  it("lays each plate, side and length in one slot that is longer than it, and each screw in one rack", () => {
    const slots = [...catalogue.trays.values()].flatMap((tray) =>
      tray.slots.flatMap((slot) =>
        slot.holds === "plate"
          ? [
              {
                plate: `${slot.plate}-${slot.holes}`,
                long: (slot.span[0] * tray.size.width) / tray.grid.columns,
              },
            ]
          : [],
      ),
    );
    expect(slots.map(({ plate }) => plate).sort()).toEqual(
      derived.plates.map(({ id }) => id).sort(),
    );
    expect(
      slots.filter(
        ({ plate, long }) => (derived.plates.find(({ id }) => id === plate)?.length ?? 0) >= long,
      ),
    ).toEqual([]);
    const racks = [...catalogue.trays.values()].flatMap(({ slots: all }) =>
      all.flatMap((slot) => (slot.holds === "rack" ? [slot.screw] : [])),
    );
    expect(racks.sort()).toEqual([...catalogue.screws.keys()].sort());
  });
});
