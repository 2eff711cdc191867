/** Edits (insert, drop, change, swap neighbours) between two words: optimal string alignment, Damerau 1964. */
const edits = (a: string, b: string): number => {
  const rows: number[][] = Array.from({ length: a.length + 1 }, (_, i) => [i]);
  for (let j = 1; j <= b.length; j++) rows[0]![j] = j;
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(rows[i - 1]![j]! + 1, rows[i]![j - 1]! + 1, rows[i - 1]![j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      rows[i]![j] = least;
    }
  }
  return rows[a.length]![b.length]!;
};

/** The accepted words that a mistyped one may have meant, nearest first: at most a third of its letters wrong, or its beginning. */
export const nearest = (word: string, accepted: Iterable<string>, most = 3): readonly string[] => {
  const typed = word.slice(0, 80).toLowerCase();
  const near: { readonly text: string; readonly far: number }[] = [];
  for (const text of accepted) {
    const other = text.toLowerCase();
    const limit = Math.max(1, Math.floor(Math.max(typed.length, other.length) / 3));
    const begins = typed.length >= 3 && (other.startsWith(typed) || other.split(/[ .-]/).includes(typed));
    if (!begins && Math.abs(other.length - typed.length) > limit) continue;
    const far = begins ? 0.5 : edits(typed, other);
    if (far <= limit) near.push({ text, far });
  }
  near.sort((a, b) => a.far - b.far || (a.text < b.text ? -1 : 1));
  return near.slice(0, most).map((entry) => entry.text);
};

/** The line of help for a near miss, or undefined where nothing is near. */
export const didYouMean = (word: string, accepted: Iterable<string>): string | undefined => {
  const near = nearest(word, accepted);
  return near.length === 0 ? undefined : `did you mean ${near.map((text) => `\`${text}\``).join(' or ')}?`;
};
