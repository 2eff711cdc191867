import type { SchemaError } from '../contract/keywordCheck.js';
import { acceptedFor } from './acceptedFor.js';
import type { Issue, IssueCode } from './error.js';
import { nearDate } from './nearDate.js';
import { nearNumber } from './nearNumber.js';
import { didYouMean } from './nearest.js';

export const pathOf = (pointer: string): readonly (string | number)[] =>
  pointer.split('/').slice(1).map((step) => {
    const plain = step.replace(/~1/g, '/').replace(/~0/g, '~');
    return /^\d+$/.test(plain) ? Number(plain) : plain;
  });

/** `operation.rootsRemoved`, `tree.log[2].op`. */
export const shownPath = (path: readonly (string | number)[]): string =>
  path.reduce<string>((text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`), '');

/** A value as it may be shown, whatever it is: `String` would call what the value brings along. */
const written = (value: unknown): string => {
  if (typeof value === 'string') return value;
  try {
    return JSON.stringify(value) ?? typeof value;
  } catch {
    return typeof value;
  }
};

const short = (value: unknown): string => {
  const text = written(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const listed = (accepted: readonly string[]): string => (accepted.length > 14 ? `${accepted.slice(0, 12).join(', ')} … (${accepted.length} in all)` : accepted.join(', '));

const unknownWord = (pointer: string, name: string): { readonly code: IssueCode; readonly kind: string } => {
  if (pointer.endsWith('/traits')) return { code: 'unknown-trait', kind: 'trait' };
  if (/\/(?:when|any|all)\/\d+$|\/given$/.test(pointer)) return { code: 'unknown-fact', kind: 'fact' };
  if (/^\/operation$|^\/tree\/log\/\d+$/.test(pointer)) return { code: 'unknown-parameter', kind: 'parameter' };
  return { code: 'unknown-field', kind: name };
};

const boundsOf = (schema: Readonly<Record<string, unknown>> | undefined): string =>
  schema === undefined ? 'a number within its bounds' : `${String(schema['minimum'] ?? '…')} to ${String(schema['maximum'] ?? '…')}`;

/** One issue for each thing that is wrong: errors that only repeat another (a branch that did not match) are left out. */
export const schemaIssues = (errors: readonly SchemaError[], file?: string): readonly Issue[] => {
  const issues: Issue[] = [];
  const seen = new Set<string>();
  const add = (code: IssueCode, path: readonly (string | number)[], message: string, more: Partial<Issue> = {}): void => {
    const shown = shownPath(path);
    const key = `${code}|${shown}|${short(more.found)}`;
    if (seen.has(key)) return;
    seen.add(key);
    issues.push({ code, path: shown, message, ...more, ...(file === undefined ? {} : { file }) });
  };
  const members = (error: SchemaError): readonly string[] => {
    const from = error.keyword === 'enum' ? error.params['allowedValues'] : Object.keys((error.parentSchema?.['properties'] as object | undefined) ?? {});
    return (from as readonly unknown[]).map(String);
  };
  for (const error of errors) {
    const path = pathOf(error.instancePath);
    const where = shownPath(path);
    const at = where === '' ? '' : ` in \`${where}\``;
    switch (error.keyword) {
      case 'additionalProperties': {
        const name = String(error.params['additionalProperty']);
        const accepted = members(error);
        const { code, kind } = unknownWord(error.instancePath, 'field');
        if (code === 'unknown-field' && /\/(?:when|any|all)\/\d+\//.test(error.instancePath)) {
          add('not-allowed', [...path, name], `\`${short(name)}\` does not fit what it compares${at}`, { found: name, accepted, help: `what fits: a value, a list of values, or ${listed(accepted)}` });
          break;
        }
        add(code, [...path, name], `unknown ${kind} \`${short(name)}\`${at}`, { found: name, accepted: acceptedFor(name, accepted), help: didYouMean(name, accepted) ?? `accepted: ${listed(accepted)}` });
        break;
      }
      case 'false schema': {
        const name = String(path.at(-1));
        add('unknown-parameter', path, `\`${short(name)}\` does not belong here${at}`, { found: name, help: 'leave it out' });
        break;
      }
      case 'enum': {
        const accepted = members(error);
        if (error.propertyName !== undefined) {
          const operation = (error.parentSchema as { readonly op?: string } | undefined)?.op;
          add('unknown-parameter', [...path, error.propertyName], `unknown parameter \`${short(error.propertyName)}\`${at}${operation === undefined ? '' : ` of ${operation}`}`, {
            found: error.propertyName, accepted, help: didYouMean(error.propertyName, accepted) ?? `accepted: ${listed(accepted)}`,
          });
          break;
        }
        const isOperation = /(?:^operation|operations\[\d+\]|^tree\.log\[\d+\])\.op$/.test(where);
        /* Where one thing has several names, as operations have in the trade, the schema gives those to go by as examples. */
        const ids = (error.parentSchema?.['examples'] as readonly string[] | undefined) ?? accepted;
        add(isOperation ? 'unknown-operation' : 'not-allowed', path, `\`${short(error.data)}\` is not ${isOperation ? 'an operation' : 'accepted'}${at}`, {
          found: error.data, accepted: acceptedFor(error.data, ids), help: (typeof error.data === 'string' ? didYouMean(error.data, accepted) : undefined) ?? `accepted: ${listed(ids)}`,
        });
        break;
      }
      case 'const':
        add('not-allowed', path, `\`${short(error.data)}\` is not accepted${at}`, { found: error.data, accepted: [String(error.params['allowedValue'])], help: `accepted: ${String(error.params['allowedValue'])}` });
        break;
      case 'required': {
        const name = String(error.params['missingProperty']);
        add('missing', [...path, name], `\`${name}\` is missing${at}`, { help: `add \`${name}\`` });
        break;
      }
      case 'type': {
        const types = ([] as unknown[]).concat(error.params['type']).map(String);
        const near = typeof error.data === 'string' && /number|integer/.test(types.join()) ? nearNumber(error.data) : undefined;
        const needed = error.parentSchema?.['required'] as readonly string[] | undefined;
        const first = needed?.length === 1 ? needed[0] : Object.keys((error.parentSchema?.['properties'] as object | undefined) ?? {}).find((name) => name === 'is');
        const meant = typeof error.data === 'object' ? undefined
          : types.includes('array') ? `list, as in \`[${String(error.data)}]\``
            : types.includes('object') && first !== undefined ? `object, as in \`{ ${first}: ${short(error.data)} }\``
              : types.includes('string') ? `string, as in \`"${String(error.data)}"\`` : undefined;
        add('wrong-type', path, error.data === null ? `no value${at}` : `\`${short(error.data)}\` is a ${Array.isArray(error.data) ? 'list' : typeof error.data}${at}`, {
          found: error.data, accepted: types,
          help: near !== undefined ? `did you mean the number ${near}?` : `accepted: ${meant ?? types.join(' or ')}`,
        });
        break;
      }
      case 'minimum':
      case 'maximum':
      case 'exclusiveMinimum': {
        const bounds = boundsOf(error.parentSchema);
        const inHundredths = error.parentSchema?.['maximum'] === 1 && Number(error.data) > 1 && Number(error.data) <= 100;
        add('out-of-bounds', path, `\`${short(error.data)}\` is out of bounds${at}`, { found: error.data, accepted: [bounds], help: `accepted: ${bounds}${inHundredths ? `; ${short(error.data)} % is ${Number(error.data) / 100}` : ''}` });
        break;
      }
      case 'pattern': {
        const isDate = /date|Frost|Repotted/.test(where);
        const near = isDate ? nearDate(String(error.data), String(error.params['pattern'])) : undefined;
        add(isDate ? 'bad-date' : 'bad-pattern', path, `\`${short(error.data)}\` has the wrong form${at}`, {
          found: error.data, help: `${near === undefined ? '' : `did you mean \`${near}\`? `}write it as ${String(error.parentSchema?.['description'] ?? error.params['pattern'])}`,
        });
        break;
      }
      case 'minProperties':
      case 'maxProperties':
      case 'minItems':
      case 'maxItems':
      case 'minLength':
      case 'maxLength': {
        const most = error.keyword.startsWith('max');
        const held = error.keyword.endsWith('Items') ? 'entries' : error.keyword.endsWith('Length') ? 'letters' : 'members';
        add(most ? 'too-large' : 'not-allowed', path, `\`${short(error.data)}\` holds too ${most ? 'many' : 'few'} ${held}${at}`, { help: `accepted: at ${most ? 'most' : 'least'} ${String(error.params['limit'])}` });
        break;
      }
      case 'uniqueItems':
        add('not-allowed', path, `\`${short(error.data)}\` holds the same twice${at}`, { help: 'leave one out' });
        break;
      case 'propertyNames':
      case 'if':
      case 'anyOf':
      case 'oneOf':
        break;
      default:
        add('not-allowed', path, `\`${short(error.data)}\` is not accepted${at}`, { help: error.message ?? error.keyword });
    }
  }
  return issues;
};
