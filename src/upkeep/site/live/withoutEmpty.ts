/** A question as the page keeps it: a proposal that need not be whole yet. */
export type Question = Readonly<Record<string, unknown>>;

export const isMembers = (value: unknown): value is Question => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A question without what holds nothing, so that a link does not carry it. */
export const withoutEmpty = (question: Question): Question =>
  Object.fromEntries(Object.entries(question).map(([name, value]) => [name, isMembers(value) ? withoutEmpty(value) : value] as const).filter(([, value]) => !isMembers(value) || Object.keys(value).length > 0));
