import type { FactWord, Knowledge, Value } from './knowledge.js';

interface AnyParameter {
  readonly name: string;
  readonly label: string;
  readonly meaning: string;
  /** What is taken for this operation where it is not told. */
  readonly assumed?: Value;
  /** How to ask a grower for it, where nothing is taken. */
  readonly ask?: string;
}

interface ChoiceParameter extends AnyParameter {
  readonly type: 'choice';
  readonly choices: readonly string[];
  readonly unit?: undefined;
  readonly bounds?: undefined;
  readonly whole?: undefined;
}

interface NumberParameter extends AnyParameter {
  readonly type: 'number';
  readonly bounds: readonly [least: number, most: number];
  /** Such as `mm`, `share` (0 to 1), `days`; a count has none. */
  readonly unit?: string;
  /** A count, which takes no fractions. */
  readonly whole?: boolean;
  readonly choices?: undefined;
}

interface PlainParameter extends AnyParameter {
  readonly type: 'boolean' | 'text';
  readonly choices?: undefined;
  readonly unit?: undefined;
  readonly bounds?: undefined;
  readonly whole?: undefined;
}

/** One field of a form: a parameter under `operation` in a proposal; its `type` says whether there are choices or bounds. */
export type ParameterForm = ChoiceParameter | NumberParameter | PlainParameter;

/** An operation with all that a form for it needs. */
export interface OperationForm {
  readonly op: string;
  readonly label: string;
  /** The kind of work that it is, for a list to choose from. */
  readonly group: { readonly id: string; readonly label: string };
  /** The ways in which it is usually done, as parameters. */
  readonly usual: readonly Readonly<Record<string, Value>>[];
  readonly parameters: readonly ParameterForm[];
}

/** `branchDiameterMm` as `branch diameter`; the unit stands beside it. */
const wordsOf = (name: string): string => name.replace(/(Mm|C)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const typeOf = (word: FactWord): ParameterForm['type'] => (word.type === 'number' || word.type === 'boolean' || word.type === 'choice' ? word.type : 'text');

/** Every operation with its parameters: type, unit, choices, bounds, and what is taken where nothing is told. */
export const operationForms = ({ operations, facts, wording }: Knowledge): readonly OperationForm[] => {
  const words = new Map(Object.values(facts).flatMap((word) => (word.given === undefined ? [] : [[word.given, word]])));
  return Object.values(operations).map(({ id, label, group, usual, parameters }) => ({
    op: id,
    label,
    group: { id: group, label: wording[`group.${group}`] ?? group },
    usual,
    parameters: parameters.map((name) => {
      const word = words.get(`operation.${name}`);
      /* The branch names a part of the told tree, and is no fact of its own. */
      if (word === undefined) return { name, label: wording[`fact.${name}.label`] ?? name, meaning: wording[`fact.${name}.meaning`] ?? name, type: 'text' };
      /* A fact that is a choice has values, one that is a number has bounds. */
      const { meaning, unit, values, bounds, whole, ask } = word;
      const assumed = word.assume?.[id] ?? word.assume?.['default'];
      return {
        name, label: word.label ?? wordsOf(name), meaning, type: typeOf(word),
        ...(unit === undefined ? {} : { unit }), ...(values === undefined ? {} : { choices: values }), ...(bounds === undefined ? {} : { bounds }), ...(whole === undefined ? {} : { whole }),
        ...(assumed === undefined ? {} : { assumed }), ...(ask === undefined ? {} : { ask }),
      } as AnyParameter as ParameterForm;
    }),
  }));
};
