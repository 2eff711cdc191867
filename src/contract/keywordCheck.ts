/** A JSON Schema 2020-12 as plain data. */
export type SchemaPart = boolean | { readonly [keyword: string]: unknown };

/** What is wrong by a schema, in the shape that ajv gives it with `verbose`. */
export interface SchemaError {
  readonly instancePath: string;
  readonly keyword: string;
  readonly params: Readonly<Record<string, unknown>>;
  readonly message?: string;
  readonly parentSchema?: Readonly<Record<string, unknown>>;
  readonly data?: unknown;
  readonly propertyName?: string;
}

/** An error as it is gathered. */
export type Told = { -readonly [Member in keyof SchemaError]: SchemaError[Member] };
export type Members = Readonly<Record<string, unknown>>;
/** Whether a value holds. Where `told` is given, what is wrong is added to it, at a path that is worth writing only then. */
export type Check = (value: unknown, at: string, told: Told[] | undefined) => boolean;

const isObject = (value: unknown): value is Members => typeof value === 'object' && value !== null && !Array.isArray(value);

const isOf: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: isObject,
  array: Array.isArray,
  string: (value) => typeof value === 'string',
  boolean: (value) => typeof value === 'boolean',
  number: Number.isFinite,
  integer: Number.isInteger,
  null: (value) => value === null,
};

/** The keywords that have a check, in the order in which ajv looks at them, so that issues come in its order. */
export const keywords = [
  'type', 'maximum', 'minimum', 'exclusiveMinimum', 'maxLength', 'minLength', 'pattern', '$ref', 'const', 'enum', 'anyOf', 'allOf', 'if',
  'maxItems', 'minItems', 'items', 'uniqueItems', 'maxProperties', 'minProperties', 'required', 'propertyNames', 'additionalProperties', 'properties',
];

const stepped = (at: string, step: string | number): string => `${at}/${String(step).replace(/~/g, '~0').replace(/\//g, '~1')}`;

const same = (a: unknown, b: unknown): boolean => {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null || Array.isArray(a) !== Array.isArray(b)) return false;
  const names = Object.keys(a);
  return names.length === Object.keys(b).length && names.every((name) => Object.hasOwn(b, name) && same((a as Members)[name], (b as Members)[name]));
};

/** Whether a text has more than so many characters, without walking one that is far longer. */
const longerThan = (text: string, limit: number): boolean => {
  if (text.length <= limit || text.length > 2 * limit) return text.length > limit;
  return [...text].length > limit;
};

/** Every one of these; where nothing is to be told, only as far as the first that fails. */
export const allOf = (checks: readonly Check[]): Check => {
  if (checks.length === 1) return checks[0]!;
  return (value, at, told) => {
    let sound = true;
    for (const check of checks) {
      sound = check(value, at, told) && sound;
      if (!sound && told === undefined) return false;
    }
    return sound;
  };
};

/** How a value is checked by one keyword of a schema; `checkOf` makes the checks of the schemas inside it. */
export const keywordCheck = (keyword: string, schema: Members, checkOf: (part: SchemaPart) => Check, checkOfRef: (ref: string) => Check): Check => {
  const limit = schema[keyword];
  const wrong = (value: unknown, at: string, told: Told[] | undefined, params: Members, message?: string): false => {
    told?.push({ instancePath: at, keyword, params, parentSchema: schema, data: value, ...(message === undefined ? {} : { message }) });
    return false;
  };
  const sized = (fits: (value: never) => boolean, kind: string, words: string): Check => (value, at, told) =>
    !isOf[kind]!(value) || fits(value as never) || wrong(value, at, told, { limit }, `must NOT have ${words}`);
  const few = `fewer than ${String(limit)}`;
  const many = `more than ${String(limit)}`;
  const bound = limit as number;
  const compared = (fits: (value: number) => boolean): Check => (value, at, told) => !Number.isFinite(value) || fits(value as number) || wrong(value, at, told, { limit });
  switch (keyword) {
    case 'type': {
      const kinds = ([] as readonly string[]).concat(limit as string).map((kind) => isOf[kind]!);
      return (value, at, told) => kinds.some((is) => is(value)) || wrong(value, at, told, { type: limit });
    }
    case 'maximum':
      return compared((value) => value <= bound);
    case 'minimum':
      return compared((value) => value >= bound);
    case 'exclusiveMinimum':
      return compared((value) => value > bound);
    case 'maxLength':
      return sized((value: string) => !longerThan(value, bound), 'string', `${many} characters`);
    case 'minLength':
      return sized((value: string) => longerThan(value, bound - 1), 'string', `${few} characters`);
    case 'pattern': {
      const pattern = new RegExp(limit as string, 'u');
      return (value, at, told) => typeof value !== 'string' || pattern.test(value) || wrong(value, at, told, { pattern: limit });
    }
    case '$ref':
      return checkOfRef(limit as string);
    case 'const':
      return (value, at, told) => same(value, limit) || wrong(value, at, told, { allowedValue: limit });
    case 'enum': {
      const values = new Set(limit as readonly unknown[]);
      return (value, at, told) => values.has(value) || wrong(value, at, told, { allowedValues: limit });
    }
    case 'anyOf': {
      const branches = (limit as readonly SchemaPart[]).map((branch) => checkOf(branch));
      return (value, at, told) => {
        const tried: Told[] | undefined = told === undefined ? undefined : [];
        if (branches.some((check) => check(value, at, tried))) return true;
        told?.push(...tried!);
        return false;
      };
    }
    case 'allOf':
      return allOf((limit as readonly SchemaPart[]).map((part) => checkOf(part)));
    case 'if': {
      const test = checkOf(limit as SchemaPart);
      const then = checkOf((schema['then'] as SchemaPart | undefined) ?? true);
      const otherwise = checkOf((schema['else'] as SchemaPart | undefined) ?? true);
      return (value, at, told) => (test(value, at, undefined) ? then : otherwise)(value, at, told);
    }
    case 'maxItems':
      return sized((value: readonly unknown[]) => value.length <= bound, 'array', `${many} items`);
    case 'minItems':
      return sized((value: readonly unknown[]) => value.length >= bound, 'array', `${few} items`);
    case 'items': {
      const check = checkOf(limit as SchemaPart);
      return (value, at, told) => {
        if (!Array.isArray(value)) return true;
        let sound = true;
        for (const [i, item] of value.entries()) sound = check(item, told === undefined ? at : stepped(at, i), told) && sound;
        return sound;
      };
    }
    case 'uniqueItems':
      return sized((value: readonly unknown[]) => new Set(value).size === value.length && !value.some((item, i) => typeof item === 'object' && value.slice(0, i).some((other) => same(other, item))), 'array', 'duplicate items');
    case 'maxProperties':
      return sized((value: Members) => Object.keys(value).length <= bound, 'object', `${many} properties`);
    case 'minProperties':
      return sized((value: Members) => Object.keys(value).length >= bound, 'object', `${few} properties`);
    case 'required': {
      const names = limit as readonly string[];
      return (value, at, told) => {
        if (!isObject(value)) return true;
        let sound = true;
        for (const missingProperty of names) if (value[missingProperty] === undefined) sound = wrong(value, at, told, { missingProperty });
        return sound;
      };
    }
    case 'propertyNames': {
      const check = checkOf(limit as SchemaPart);
      return (value, at, told) => {
        if (!isObject(value)) return true;
        let sound = true;
        for (const name of Object.keys(value)) {
          const before = told?.length ?? 0;
          sound = check(name, at, told) && sound;
          for (const error of told?.slice(before) ?? []) error.propertyName = name;
        }
        return sound;
      };
    }
    case 'additionalProperties': {
      const known = new Set(Object.keys((schema['properties'] as Members | undefined) ?? {}));
      const check = limit === false ? undefined : checkOf(limit as SchemaPart);
      return (value, at, told) => {
        if (!isObject(value)) return true;
        let sound = true;
        for (const name of Object.keys(value)) {
          if (known.has(name)) continue;
          const fits = check === undefined ? wrong(value, at, told, { additionalProperty: name }) : check(value[name], told === undefined ? at : stepped(at, name), told);
          sound = fits && sound;
        }
        return sound;
      };
    }
    case 'properties': {
      const checks = Object.entries(limit as Readonly<Record<string, SchemaPart>>).map(([name, part]) => [name, checkOf(part)] as const);
      return (value, at, told) => {
        if (!isObject(value)) return true;
        let sound = true;
        for (const [name, check] of checks) {
          const member = value[name];
          if (member !== undefined) sound = check(member, told === undefined ? at : stepped(at, name), told) && sound;
        }
        return sound;
      };
    }
    default:
      throw new Error(`no check of \`${keyword}\``);
  }
};
