type Members = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Members => typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * A proposal, or anything of the kind, with a JSON Merge Patch put on it.
 *
 * Use it where a user takes up a change that an answer offers: `changes[].patch` of an assessment or of a plan.
 * Source: RFC 7396. A member `__proto__` is left out.
 * @param target stays as it is
 * @param patch members that are `null` are taken away, objects are merged, all else is put in place
 * @example const again = await advisor.assess(mergePatch(proposal, answer.changes[0].patch));
 */
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
