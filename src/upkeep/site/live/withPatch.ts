/** A question as the page keeps it: a proposal that need not be whole yet. */
export type Question = Readonly<Record<string, unknown>>;

export const isMembers = (value: unknown): value is Question => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A question with a merge patch applied (RFC 7396); what holds nothing any more goes, so that a link does not carry it. */
export const withPatch = (question: Question, patch: Question): Question => {
  const members = new Map(Object.entries(question));
  for (const [name, value] of Object.entries(patch)) {
    const kept = members.get(name);
    const made = isMembers(value) ? withPatch(isMembers(kept) ? kept : {}, value) : value;
    if (made === null || (isMembers(made) && Object.keys(made).length === 0)) members.delete(name);
    else members.set(name, made);
  }
  return Object.fromEntries(members);
};
