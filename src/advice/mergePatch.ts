type Members = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Members => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value with a JSON Merge Patch applied: RFC 7396. Keys that reach prototypes are left out. */
export const mergePatch = (target: unknown, patch: unknown): unknown => {
  if (!isObject(patch)) return patch;
  const merged = new Map(isObject(target) ? Object.entries(target) : []);
  for (const [key, value] of Object.entries(patch)) {
    if (key === '__proto__') continue;
    if (value === null) merged.delete(key);
    else merged.set(key, mergePatch(merged.get(key), value));
  }
  return Object.fromEntries(merged);
};
