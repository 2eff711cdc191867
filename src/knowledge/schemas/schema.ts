/** A JSON Schema 2020-12 as a plain object. */
export type Schema = { readonly [keyword: string]: unknown };

export const schemaId = (name: string): string => `https://sparebud.example/schemas/${name}.schema.json`;

export const document = (name: string, title: string, body: Schema): Schema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: schemaId(name),
  title,
  ...body,
});

/** An object that knows all its members: others are an error with a near miss. */
export const closed = (properties: Readonly<Record<string, Schema>>, required: readonly string[] = []): Schema => ({
  type: 'object',
  properties,
  ...(required.length > 0 ? { required } : {}),
  additionalProperties: false,
});

/** A part of another schema of ours. */
export const partOf = (name: string, pointer: string): Schema => ({ $ref: `${name}.schema.json#${pointer}` });

export const listOf = (items: Schema, atLeast = 0): Schema => ({ type: 'array', items, ...(atLeast > 0 ? { minItems: atLeast } : {}) });
export const mapOf = (values: Schema): Schema => ({ type: 'object', additionalProperties: values });
export const text = (description?: string): Schema => ({ type: 'string', ...(description === undefined ? {} : { description }) });
export const oneOf = (values: readonly string[], description?: string): Schema => ({ enum: values, ...(description === undefined ? {} : { description }) });

/** A day of a question. */
export const dated: Schema = { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$', description: 'YYYY-MM-DD' };

/** By what the value is: each branch then speaks for itself, so that a mistake gives one error and not one a branch. */
export const byKind = (branches: Readonly<Partial<Record<'string' | 'number' | 'boolean' | 'array' | 'object', Schema>>>): Schema => ({
  type: Object.keys(branches),
  allOf: Object.entries(branches).map(([type, then]) => ({ if: { type }, then })),
});

/** Ids that a folder of knowledge has at the moment: an editor completes them; a published schema leaves them open, `vet` checks them. */
export interface Known {
  readonly sources: Readonly<Record<string, { readonly title: string }>>;
  readonly species: readonly string[];
  readonly parents: readonly string[];
  readonly rules: readonly string[];
}

export const sourceId = (known: Known | undefined): Schema =>
  known === undefined
    ? text('id of a source in shared/sources.yaml')
    : { anyOf: Object.entries(known.sources).map(([id, { title }]) => ({ const: id, description: title })) };

/** An id of one kind. */
export const idOf = (known: readonly string[] | undefined, description: string): Schema => (known === undefined ? text(description) : oneOf(known, description));
