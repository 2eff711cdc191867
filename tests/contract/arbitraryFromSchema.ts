import fc from 'fast-check';

type Schema = { readonly [keyword: string]: unknown };

/** Dates that exist, from the year 1 to the year 9999, most of them of our days. */
export const isoDate: fc.Arbitrary<string> = fc.oneof(
  { weight: 9, arbitrary: fc.integer({ min: 0, max: 36_000 }).map((day) => new Date(Date.UTC(1970, 0, 1 + day)).toISOString().slice(0, 10)) },
  { weight: 1, arbitrary: fc.date({ min: new Date('0001-01-01T00:00:00Z'), max: new Date('9999-12-31T00:00:00Z'), noInvalidDate: true }).map((date) => date.toISOString().slice(0, 10)) },
);

/** Forms of text that a pattern alone would mostly miss: days must exist. */
const patterned: Readonly<Record<string, fc.Arbitrary<string>>> = {
  '^[0-9]{4}-[0-9]{2}-[0-9]{2}$': isoDate,
  '^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$': fc.tuple(isoDate, fc.constantFrom(4, 7, 10)).map(([date, length]) => date.slice(0, length)),
  '^[0-9]{2}-[0-9]{2}$': isoDate.map((date) => date.slice(5)),
};

/** What is drawn in the place of what the schema alone would allow at a path: names that must be known. */
export type Instead = Readonly<Record<string, fc.Arbitrary<unknown>>>;

/** Values that a schema of ours allows: the keywords that our schemas use, and no others. */
export const arbitraryFromSchema = (root: Schema, instead: Instead): fc.Arbitrary<unknown> => {
  const object = (properties: Readonly<Record<string, Schema>>, required: readonly string[], path: string): fc.Arbitrary<unknown> => {
    const names = Object.keys(properties).filter((name) => (properties[name] as unknown) !== false);
    const all = fc.record(Object.fromEntries(names.map((name) => [name, drawn(properties[name]!, path === '' ? name : `${path}.${name}`)])), { requiredKeys: [...required] });
    /* Few members at a time, as people write them. */
    return fc.tuple(all, fc.nat()).map(([value, keep]) => Object.fromEntries(Object.entries(value).filter(([name], i) => required.includes(name) || (keep >> i % 29) % 3 === 0)));
  };

  /** An operation has the parameters that its `if … then` names. */
  const operation = (schema: Schema, inLog: boolean, path: string): fc.Arbitrary<unknown> => {
    const properties = schema['properties'] as Readonly<Record<string, Schema>>;
    const kinds = (schema['allOf'] as readonly { readonly if: { readonly properties: { readonly op: { readonly enum: readonly string[] } } }; readonly then: { readonly propertyNames: { readonly enum: readonly string[] } } }[])
      .map((each) => ({ called: each.if.properties.op.enum, names: each.then.propertyNames.enum.filter((name) => name !== 'op' && (inLog || !['date', 'outcome', 'note'].includes(name))) }));
    return fc.constantFrom(...kinds).chain(({ called, names }) =>
      fc.tuple(fc.constantFrom(...called), object(Object.fromEntries(names.map((name) => [name, properties[name]!])), inLog ? ['date'] : [], path)).map(([op, told]) => ({ op, ...(told as object) })));
  };

  const byType = (type: string, schema: Schema, path: string): fc.Arbitrary<unknown> => {
    switch (type) {
      case 'string': {
        const pattern = schema['pattern'] as string | undefined;
        if (pattern !== undefined) return patterned[pattern] ?? fc.stringMatching(new RegExp(pattern));
        return fc.string({ minLength: (schema['minLength'] as number | undefined) ?? 0, maxLength: Math.min(30, (schema['maxLength'] as number | undefined) ?? 30), unit: 'binary' });
      }
      case 'integer':
        return fc.integer({ min: schema['minimum'] as number, max: schema['maximum'] as number });
      case 'number': {
        const [min, max] = [(schema['minimum'] as number | undefined) ?? -1e6, (schema['maximum'] as number | undefined) ?? 1e6];
        return fc.oneof(fc.double({ min, max, noNaN: true }), fc.double({ min, max, noNaN: true }).map((value) => Math.min(max, Math.max(min, Math.round(value * 10) / 10))), fc.constantFrom(min, max));
      }
      case 'boolean':
        return fc.boolean();
      case 'null':
        return fc.constant(null);
      case 'array':
        return (schema['uniqueItems'] === true ? fc.uniqueArray : fc.array)(drawn(schema['items'] as Schema, `${path}[]`), { minLength: (schema['minItems'] as number | undefined) ?? 0, maxLength: Math.min((schema['maxItems'] as number | undefined) ?? 4, (schema['minItems'] as number | undefined) ?? 4) });
      case 'object':
        return schema['properties'] === undefined ? fc.dictionary(fc.string({ maxLength: 8 }), fc.jsonValue({ maxDepth: 2 }), { maxKeys: 3 }) : object(schema['properties'] as Readonly<Record<string, Schema>>, (schema['required'] as readonly string[] | undefined) ?? [], path);
      default:
        throw new Error(`no arbitrary for the type ${type} at ${path}`);
    }
  };

  const drawn = (schema: Schema, path: string): fc.Arbitrary<unknown> => {
    if (instead[path] !== undefined) return instead[path];
    if (schema['$ref'] === '#/$defs/operation') return operation((root['$defs'] as Readonly<Record<string, Schema>>)['operation']!, path.includes('log'), path);
    if (typeof schema['$ref'] === 'string') return drawn((root['$defs'] as Readonly<Record<string, Schema>>)[schema['$ref'].replace('#/$defs/', '')]!, path);
    if (schema['enum'] !== undefined) return fc.constantFrom(...(schema['enum'] as readonly unknown[]));
    if ('const' in schema) return fc.constant(schema['const']);
    if (schema['anyOf'] !== undefined) return fc.oneof(...(schema['anyOf'] as readonly Schema[]).map((each) => drawn(each, path)));
    if (schema['then'] !== undefined) return fc.oneof(drawn(schema['then'] as Schema, path), drawn(schema['else'] as Schema, path));
    const kinds = schema['allOf'] as readonly { readonly if: Schema; readonly then: Schema }[] | undefined;
    if (kinds !== undefined) return fc.oneof(...kinds.map((kind) => drawn({ type: kind.if['type'], ...kind.then }, path)));
    const types = ([] as unknown[]).concat(schema['type']) as readonly string[];
    return types.length === 1 ? byType(types[0]!, schema, path) : fc.oneof(...types.map((type) => byType(type, schema, path)));
  };

  return drawn(root, '');
};
