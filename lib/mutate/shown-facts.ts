import type { SheetView } from "../model/sheet.ts";

/** What a sheet is told apart by or was made from, not what it tells: the picture, the fingerprint, the definitions and the file behind it. */
const apart = new Set(["svg", "fingerprint", "shows", "origin"]);
/** Lists that are looked up or all obeyed, not worked through: the order of their lines tells nothing. */
const lookedUp = new Set(["contents", "legend", "table", "labels", "cautions"]);

const sorted = (list: readonly unknown[]): readonly string[] =>
  list.map((one) => JSON.stringify(one)).sort();

function same(a: unknown, b: unknown, key: string): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) && Array.isArray(b)) {
    if (a.length !== b.length) return false;
    const [left, right] = lookedUp.has(key) ? [sorted(a), sorted(b)] : [a, b];
    return left.every((one, index) => same(one, right[index], key));
  }
  const [left, right] = [a, b] as readonly Record<string, unknown>[];
  const keys = Object.keys({ ...left, ...right }).filter((one) => !apart.has(one));
  return keys.every((one) => same(left?.[one], right?.[one], one));
}

/** True where a sheet is there in one library only, or prints another chain, number, side, order, caution or word around them. Pictures are not looked at. */
export function showsOtherFacts(
  before: ReadonlyMap<string, SheetView>,
  after: readonly SheetView[],
): boolean {
  return (
    before.size !== after.length || after.some((sheet) => !same(before.get(sheet.id), sheet, ""))
  );
}
