/** Values by key, keys in the order they first appear. */
export function grouped<T>(
  values: Iterable<T>,
  key: (value: T) => string,
): ReadonlyMap<string, readonly [T, ...T[]]> {
  const groups = new Map<string, [T, ...T[]]>();
  for (const value of values) {
    const group = groups.get(key(value));
    if (group) group.push(value);
    else groups.set(key(value), [value]);
  }
  return groups;
}
