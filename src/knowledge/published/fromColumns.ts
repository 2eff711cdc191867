/** Records by columns: each member of the records is a list with a place for every record, null where a record lacks it. */
export type Columns = Readonly<Record<string, readonly unknown[]>>;

/** The records that columns hold. */
export const fromColumns = (columns: Columns): readonly Readonly<Record<string, unknown>>[] => {
  const entries = Object.entries(columns);
  const length = entries[0]?.[1].length ?? 0;
  return Array.from({ length }, (_, i) => {
    const record: Record<string, unknown> = {};
    for (const [name, column] of entries) if (column[i] !== null) record[name] = column[i];
    return record;
  });
};
