/** Every pair of a list, each once, in its order. */
export function pairs<T>(list: readonly T[]): readonly (readonly [T, T])[] {
  return list.flatMap((a, index) => list.slice(index + 1).map((b) => [a, b] as const));
}
