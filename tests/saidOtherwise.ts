type Members = Readonly<Record<string, unknown>>;

/** A text with its parameters filled in, as this repository promises it: no brackets around a number that is not known, and the first letter large after a full stop, a colon, a question or an exclamation. */
const filled = (text: string, params: Members): string =>
  text.split(/( \([^)]*\))/).filter((piece) => !(piece.startsWith(' (') && Object.entries(params).some(([name, value]) => value === '…' && piece.includes(`{${name}}`)))).join('').split(/(\{[^}]+\})/).reduce((said, piece) => {
    if (!/^\{[^}]+\}$/.test(piece)) return said + piece;
    const value = String(params[piece.slice(1, -1)]);
    return said + (/[.:?!] $/.test(said) ? value.slice(0, 1).toUpperCase() + value.slice(1) : value);
  }, '');

/** Parameters that no language changes: names, ids and dates. */
const names = ['species', 'species.name', 'asked', 'answered', 'name', 'traits', 'rules', 'from', 'to', 'date', 'was', 'since', 'place', 'branch', 'branches', 'one', 'other', 'trunk', 'instead', 'keep', 'remove'];

/** A number, a share, a list of numbers, or nothing. */
const isFigure = (value: unknown): boolean => typeof value !== 'string' || /^[-–…\d\s.,%]*$/.test(value);

/**
 * Where an answer in another language differs from the English one by more than its words, or says anything in English; empty where all is well.
 *
 * @param texts of that language, by id
 */
export const saidOtherwise = (english: unknown, other: unknown, texts: Readonly<Record<string, string>>, path = ''): readonly string[] => {
  if (typeof english !== 'object' || english === null || typeof other !== 'object' || other === null) {
    const mayDiffer = /\.(?:label|best\.\d+)$/.test(path) && typeof other === 'string';
    return english === other || mayDiffer ? [] : [`${path}: ${String(english)} and ${String(other)}`];
  }
  const [one, two] = [english as Members, other as Members];
  const keys = (members: Members): string => Object.keys(members).join();
  if (keys(one) !== keys(two)) return [`${path}: ${keys(one)} and ${keys(two)}`];
  if (typeof one['id'] !== 'string' || typeof one['text'] !== 'string') return Object.keys(one).flatMap((key) => saidOtherwise(one[key], two[key], texts, `${path}.${key}`));
  const { id, text, params } = two as { readonly id: string; readonly text: string; readonly params?: Members };
  if (id !== one['id']) return [`${path}: ${one['id']} and ${id}`];
  const own = texts[params === undefined ? `caution.${id}` : id];
  if (own === undefined) return [`${path}: ${id} has no text`];
  const said = one['params'] as Members | undefined;
  if (keys(params ?? {}) !== keys(said ?? {})) return [`${path}: ${id} has other parameters`];
  return [
    ...(text === filled(own, params ?? {}) ? [] : [`${path}: ${id} says ${text}`]),
    ...(text.includes('{') || (text.includes('…') && !one['text'].includes('…')) ? [`${path}: ${id} leaves a parameter open: ${text}`] : []),
    ...Object.entries(params ?? {}).filter(([name, value]) => value === said?.[name] && !isFigure(value) && !names.includes(name)).map(([name, value]) => `${path}: ${name} of ${id} is English: ${String(value)}`),
  ];
};
