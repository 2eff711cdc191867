/// <reference lib="dom" />
import type { Issue, Knowledge } from 'sparebud';
import { capital } from '../capital.js';
import { valueText } from '../valueText.js';
import { el } from './el.js';
import type { Field } from './fields.js';

/** A field on the page. */
export interface FieldView {
  readonly path: string;
  readonly whole: HTMLElement;
  readonly input: HTMLInputElement | HTMLSelectElement;
  /** Shows what the question says, unless it is being typed. */
  readonly show: (value: unknown) => void;
  readonly fault: (issues: readonly Issue[]) => void;
}

const idOf = (path: string): string => `at-${path.replaceAll('.', '-')}`;

const selectOf = (field: Field, id: string, word: { readonly unit?: string }, knowledge: Knowledge): HTMLSelectElement => {
  const values = field.type === 'boolean' ? [true, false] : (field.choices ?? []);
  return el('select', { id, 'aria-describedby': `${id}-more ${id}-fault` }, el('option', { value: '' }, 'not told'), ...values.map((value) => el('option', { value: String(value) }, valueText(value, word as never, knowledge))));
};

const inputOf = (field: Field, id: string): HTMLInputElement => {
  const percent = field.unit === 'share' ? 100 : 1;
  const [min, max] = field.bounds ?? [];
  return el('input', {
    id, 'aria-describedby': `${id}-more ${id}-fault`, autocomplete: 'off', list: field.list, placeholder: field.placeholder, type: field.type,
    ...(field.type === 'number' ? { inputmode: 'decimal', step: field.whole === true ? '1' : 'any', min: min === undefined ? undefined : String(min * percent), max: max === undefined ? undefined : String(max * percent) } : {}),
  });
};

/** What is wrong with what stands in a field, for one who sees the field: in its own unit, without its path. */
const faultText = ({ code, path, message, help }: Issue, { bounds, unit }: Field): string => {
  if (code === 'out-of-bounds' && bounds !== undefined) return unit === 'share' ? `From ${bounds[0] * 100} to ${bounds[1] * 100} %.` : `From ${bounds[0]} to ${bounds[1]}.`;
  return capital([message.replace(` in \`${path}\``, ''), help].filter((text) => text !== undefined).join('; ')).replaceAll(/`([^`]*)`/g, '“$1”');
};

/** A labelled field that calls `told` with what was told, `null` where it was emptied. */
export const fieldView = (field: Field, knowledge: Knowledge, told: (path: string, value: unknown) => void): FieldView => {
  const id = idOf(field.path);
  const word = field.unit === undefined ? {} : { unit: field.unit };
  const percent = field.unit === 'share' ? 100 : 1;
  const input = field.type === 'choice' || field.type === 'boolean' ? selectOf(field, id, word, knowledge) : inputOf(field, id);
  const unit = field.unit === undefined ? '' : `, ${field.unit === 'share' ? '%' : field.unit}`;
  /* What only says the label again is left out. */
  const meaning = field.label.toLowerCase() === field.meaning.toLowerCase() ? '' : `${capital(field.meaning)}${field.meaning === '' ? '' : '.'}`;
  const taken = field.assumed === undefined ? '' : `Taken if not told: ${valueText(field.assumed, word as never, knowledge)}. `;
  const faults = el('p', { id: `${id}-fault`, class: 'fault' });
  input.addEventListener('change', () => {
    const text = input.value.trim();
    told(field.path, text === '' ? null : field.type === 'number' ? Number((Number(text) / percent).toPrecision(12)) : field.type === 'boolean' ? text === 'true' : text);
  });
  return {
    path: field.path,
    input,
    whole: el('div', { class: 'field' }, el('label', { for: id }, `${capital(field.label)}${unit}`), input, el('p', { id: `${id}-more`, class: 'more' }, `${taken}${meaning}`.trim()), faults),
    show: (value) => {
      input.value = value === undefined ? '' : typeof value === 'number' ? String(Number((value * percent).toPrecision(12))) : String(value);
    },
    fault: (issues) => {
      faults.textContent = issues.map((issue) => faultText(issue, field)).join(' ');
      if (issues.length === 0) input.removeAttribute('aria-invalid');
      else {
        input.setAttribute('aria-invalid', 'true');
        input.closest('details')?.setAttribute('open', '');
      }
    },
  };
};
