import type { Knowledge, Rule } from './knowledge.js';

type Worded = Pick<Knowledge, 'rules' | 'operations' | 'facts' | 'phases'>;

/** The parts of knowledge that hold texts of their own, each text as `textOf` gives it: by its id in a wording, and as it stands, if it does. */
export const withTexts = ({ rules, operations, facts, phases }: Worded, textOf: (id: string, own: string | undefined) => string | undefined): Worded => {
  const worded = <Entries extends object>(entries: Entries, before: string, ...names: readonly string[]): Entries =>
    Object.fromEntries(Object.entries(entries).map(([id, entry]) => {
      const made: Record<string, unknown> = { ...(entry as object) };
      for (const name of names) {
        const text = textOf(`${before}${id}.${name}`, made[name] as string | undefined);
        if (text !== undefined) made[name] = text;
      }
      made['unless'] &&= (entry as Rule).unless.map((reason, n) => ({ ...reason, because: textOf(`${id}.unless.${n}`, reason.because) }));
      return [id, made];
    })) as unknown as Entries;
  return {
    rules: worded(rules, '', 'title', 'because'),
    operations: worded(operations, 'operation.', 'label'),
    facts: worded(facts, 'fact.', 'label', 'meaning'),
    phases: worded(phases, 'phase.', 'label', 'being', 'meaning', 'seen'),
  };
};
