import { isMap, isPair, isScalar, type Pair, type YAMLMap } from 'yaml';

const keyOf = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.value) : String(pair.key));

/** Puts the members of a mapping in this order, comments with them; those that it does not name stay last, in theirs. */
export const inOrder = (map: YAMLMap, order: readonly string[]): void => {
  /* A comment above the first member belongs to the mapping, and would else stay above whatever comes first. */
  const [first] = map.items;
  const place = (pair: Pair): number => {
    const at = order.indexOf(keyOf(pair));
    return at < 0 ? order.length : at;
  };
  const sorted = map.items.toSorted((a, b) => place(a) - place(b));
  if (first !== undefined && sorted[0] !== first && isPair(first) && isScalar(first.key) && map.commentBefore != null && map.commentBefore !== '') {
    first.key.commentBefore = map.commentBefore;
    map.commentBefore = null;
  }
  map.items.splice(0, map.items.length, ...sorted);
};

/** The mapping at a path, where there is one. */
export const mapAt = (document: { readonly getIn: (path: readonly (string | number)[], keep: true) => unknown }, path: readonly (string | number)[]): YAMLMap | undefined => {
  const found = document.getIn(path, true);
  return isMap(found) ? found : undefined;
};
