import { allOf, type Check, keywordCheck, keywords, type Members, type SchemaError, type SchemaPart, type Told } from './keywordCheck.js';

/** Keywords that have no check of their own: words for people, and parts of other keywords. */
const silent = new Set(['$schema', '$id', '$defs', 'title', 'description', 'examples', 'then', 'else']);

/** Says what is wrong with a value; nothing where it is sound. */
export type Validator = (value: unknown) => readonly SchemaError[];

/**
 * A check of values by a JSON Schema, made of closures: no code is written at run time, so a strict content policy lets it run.
 *
 * It knows the keywords that our schemas use and refuses others; the tests hold it to ajv, error by error.
 * @param schemas by the name that references call them
 */
export const validatorOf = (name: string, schemas: Readonly<Record<string, object>>): Validator => {
  const made = new Map<string, Check>();

  const checkOfRef = (ref: string, base: string): Check => {
    const [file, pointer = ''] = ref.split('#') as [string, string | undefined];
    const home = file === '' ? base : file;
    const key = `${home}#${pointer}`;
    const kept = made.get(key);
    if (kept !== undefined) return kept;
    let part: unknown = schemas[home];
    for (const step of pointer.split('/').slice(1)) part = (part as Members | undefined)?.[step.replace(/~1/g, '/').replace(/~0/g, '~')];
    if (part === undefined) throw new Error(`no schema ${key}`);
    /* A schema may refer to itself: until it is made, this stands in for it. */
    let check: Check | undefined;
    made.set(key, (value, at, told) => check!(value, at, told));
    check = checkOf(part as SchemaPart, home);
    made.set(key, check);
    return check;
  };

  const checkOf = (schema: SchemaPart, base: string): Check => {
    if (schema === true) return () => true;
    if (schema === false) {
      return (value, at, told) => {
        told?.push({ instancePath: at, keyword: 'false schema', params: {}, data: value });
        return false;
      };
    }
    const foreign = Object.keys(schema).find((keyword) => !keywords.includes(keyword) && !silent.has(keyword));
    if (foreign !== undefined) throw new Error(`no check of \`${foreign}\` in ${base}`);
    return allOf(keywords.filter((keyword) => schema[keyword] !== undefined).map((keyword) => keywordCheck(keyword, schema, (part) => checkOf(part, base), (ref) => checkOfRef(ref, base))));
  };

  const check = checkOfRef('#', name);
  return (value) => {
    if (check(value, '', undefined)) return [];
    const told: Told[] = [];
    check(value, '', told);
    return told;
  };
};
