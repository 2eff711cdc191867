/** Freezes a plain value and all that it holds; lists of numbers are frozen without looking at each. */
export const frozen = <T>(value: T): T => {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  if (Array.isArray(value) && typeof value[0] === 'number') return value;
  Object.values(value).forEach(frozen);
  return value;
};
