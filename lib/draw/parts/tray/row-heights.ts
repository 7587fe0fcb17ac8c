/** What a slot asks of the rows it spans: the first of them, how many, and the height of them all, mm. */
export type RowNeed = { readonly from: number; readonly rows: number; readonly height: number };

/** How much higher than to scale a row becomes that needs no more. */
const most = 1.35;
/** Heights of a tray's rows, mm: each as high as its slots need by the first of the needs that have room; what is left shared so
 * that all come near to one height; all of one height where no needs have room. `own` is a row's height to scale. */
export function rowHeights(
  asked: readonly (readonly RowNeed[])[],
  rows: number,
  { room, own }: { readonly room: number; readonly own: number },
): readonly number[] {
  for (const needs of asked) {
    const least = leastHeights(needs, rows);
    const level = waterLevel(least, room);
    if (level !== undefined) return least.map((one) => Math.max(one, Math.min(level, most * own)));
  }
  return Array.from({ length: rows }, () => Math.min(room / rows, most * own));
}

/** The least height of each row; where a slot spans several, the lower ones give it what it lacks. */
function leastHeights(needs: readonly RowNeed[], rows: number): readonly number[] {
  const least = Array.from({ length: rows }, () => 0);
  for (const { from, rows: across, height } of [...needs].sort((a, b) => a.rows - b.rows)) {
    const spanned = least.slice(from, from + across);
    const level = waterLevel(spanned, height) ?? 0;
    for (const [at, own] of spanned.entries()) least[from + at] = Math.max(own, level);
  }
  return least;
}

/** The height to which all lower rows can be raised in a room; undefined where the least heights alone have none. */
function waterLevel(least: readonly number[], room: number): number | undefined {
  let left = room;
  for (const [index, height] of [...least].sort((a, b) => b - a).entries()) {
    const level = left / (least.length - index);
    if (height <= level) return level;
    left -= height;
  }
  return undefined;
}
