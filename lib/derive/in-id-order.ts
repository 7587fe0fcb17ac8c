/** The values of a map by their ids in code-unit order, however the map was filled. */
export function inIdOrder<T>(map: ReadonlyMap<string, T>): readonly T[] {
  return [...map].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, value]) => value);
}
