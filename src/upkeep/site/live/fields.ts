import type { FactWord, Knowledge, OperationForm, ParameterForm } from 'sparebud';
import { factLabel } from '../factLabel.js';

/** One thing that can be told, by its path in a proposal. */
export interface Field extends Pick<ParameterForm, 'label' | 'meaning' | 'assumed'> {
  readonly path: string;
  readonly unit?: ParameterForm['unit'];
  readonly choices?: ParameterForm['choices'];
  readonly bounds?: ParameterForm['bounds'];
  readonly whole?: ParameterForm['whole'];
  readonly type: 'choice' | 'number' | 'boolean' | 'text' | 'date';
  /** Names to choose from while typing. */
  readonly list?: string;
  readonly placeholder?: string;
}

/** The fields of an operation; a branch of a told structure is not among them, for this page asks about trees without one. */
export const operationFields = ({ parameters }: OperationForm): readonly Field[] =>
  parameters.filter(({ type }) => type !== 'text').map(({ name, ...rest }) => ({ ...rest, path: `operation.${name}` }));

const fieldOf = (word: FactWord): Field => ({
  path: word.given!, label: factLabel(word), meaning: word.meaning, type: word.type as Field['type'],
  ...(word.unit === undefined ? {} : { unit: word.unit }), ...(word.values === undefined ? {} : { choices: word.values }), ...(word.bounds === undefined ? {} : { bounds: word.bounds }), ...(word.whole === undefined ? {} : { whole: word.whole }),
  ...(word.assume?.['default'] === undefined ? {} : { assumed: word.assume['default'] }),
});

/* Lists and dates, from which facts of another kind are counted. */
const apart = ['tree.log', 'tree.structure', 'tree.lastRepotted'];

/** What can be told of the tree itself, its name apart: each fact that has a place of its own in a proposal. */
export const treeFields = ({ aims, facts, phases }: Knowledge): readonly Field[] => [
  ...Object.values(facts)
    .filter(({ given, type }) => given?.startsWith('tree.') === true && !apart.includes(given) && (type === 'choice' || type === 'boolean' || type === 'number'))
    .map(fieldOf)
    .map((field) => (field.path === 'tree.phase' && field.choices === undefined ? { ...field, choices: Object.keys(phases) } : field))
    /* A style that is not told is none that can be told. */
    .map(({ assumed, ...field }) => (field.path === 'tree.aim.style' ? { ...field, choices: Object.keys(aims.styles) } : { ...field, ...(assumed === undefined ? {} : { assumed }) })),
  { path: 'tree.lastRepotted', label: 'last repotted', meaning: 'the day, month or year: 2025-03-14, 2025-03 or 2025', type: 'text', placeholder: '2025-03' },
];

/** Where the tree stands. */
export const whereFields: readonly Field[] = [
  { path: 'where.place', label: 'place', meaning: 'a weather station near you; begin to type its name', type: 'text', list: 'places' },
  { path: 'where.lastFrost', label: 'usual last frost', meaning: 'month and day, such as 04-20', type: 'text', placeholder: '04-20' },
  { path: 'where.firstFrost', label: 'usual first frost', meaning: 'month and day, such as 10-25', type: 'text', placeholder: '10-25' },
  { path: 'where.latitude', label: 'latitude', meaning: 'degrees, south of the equator negative', type: 'number', bounds: [-90, 90] },
  { path: 'where.region', label: 'country or state', meaning: 'for alerts of pests and disease: DE, US-CA', type: 'text', placeholder: 'DE' },
];
