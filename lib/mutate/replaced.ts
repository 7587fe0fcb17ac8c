/** Plain data with the value at a path replaced, or its key taken away where the value is undefined; what is beside the path is shared. */
export function replaced(
  data: unknown,
  path: readonly (string | number)[],
  value: unknown,
): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(data)) {
    const copy = [...data];
    copy[Number(key)] = replaced(copy[Number(key)], rest, value);
    return copy;
  }
  const copy = { ...(data as Record<string, unknown>) };
  const inner = replaced(copy[key], rest, value);
  if (inner === undefined) delete copy[key];
  else copy[key] = inner;
  return copy;
}
