import type { WarmPage } from "./warm-page.ts";

/** What runs over in the page shown, in millimetres: every region marked data-fit, and the sheet against its paper. */
export async function measureFit({ page }: WarmPage): Promise<{ what: string; by: number }[]> {
  return page.evaluate(() => {
    const perMm = 96 / 25.4;
    const slack = 1.5;
    return [...document.querySelectorAll<HTMLElement>("[data-fit]")].flatMap((region) => {
      const by = Math.max(
        region.scrollHeight - region.clientHeight,
        region.scrollWidth - region.clientWidth,
      );
      return by > slack
        ? [{ what: region.dataset["fit"] ?? "region", by: Math.round((by / perMm) * 10) / 10 }]
        : [];
    });
  });
}
