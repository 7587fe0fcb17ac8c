import type { Overflow } from "../model/rule.ts";

/** How close a sheet may be set, in the order of trying; the styles are in templates/style/fit.css. */
export const closeness = ["fit--close", "fit--closest"] as const;

/** Runs in the page: sets every sheet as loosely as it fits, and tells of the first what still runs over when it is set as
 * close as may be. `box` says in which element the sheets stand. */
export function fitSheets(box: string, closer: readonly string[]): Overflow[] {
  const perMm = 96 / 25.4;
  const slack = 1.5;
  const tenths = (pixels: number): number => Math.round((pixels / perMm) * 10) / 10;
  const over = (region: Element): number =>
    Math.max(region.scrollHeight - region.clientHeight, region.scrollWidth - region.clientWidth);
  const rowsOver = (sheet: Element, region: Element): Overflow["rows"] => {
    const rows = [...region.querySelectorAll("[data-row]")];
    let left = region.scrollHeight - region.clientHeight;
    const gone: string[] = [];
    while (left > slack && rows.length > gone.length) {
      const row = rows[rows.length - 1 - gone.length];
      left -= row?.getBoundingClientRect().height ?? 0;
      const name =
        row?.querySelector(".called, th, h2, .slot")?.textContent ?? row?.textContent ?? "";
      gone.unshift(name.replace(/\s+/g, " ").trim().slice(0, 60));
    }
    return gone.length > 0 && sheet.contains(region)
      ? { of: rows.length, fit: rows.length - gone.length, over: gone }
      : undefined;
  };
  /** What runs over in its regions, and what a drawing says of itself. */
  const measured = (sheet: Element): Overflow[] => {
    const regions = [
      ...(sheet.matches("[data-fit]") ? [sheet] : []),
      ...sheet.querySelectorAll("[data-fit]"),
    ];
    const drawn = [...sheet.querySelectorAll("[data-over]")].map((group) => ({
      what: group.getAttribute("data-over") ?? "",
      by: Number(group.getAttribute("data-by")),
    }));
    return regions
      .flatMap((region): Overflow[] => {
        const by = over(region);
        if (by <= slack) return [];
        const rows = rowsOver(sheet, region);
        const what = region.getAttribute("data-fit") ?? "region";
        return [{ what, by: tenths(by), ...(rows ? { rows } : {}) }];
      })
      .concat(drawn);
  };
  const fitted = [...document.querySelectorAll(`${box} .sheet`)].map((sheet) => {
    let now = measured(sheet);
    for (const name of closer) {
      if (now.length === 0) break;
      sheet.classList.remove(...closer);
      sheet.classList.add(name);
      now = measured(sheet);
    }
    return now;
  });
  return fitted[0] ?? [];
}
