/** What can be wrong, as a code that a program may look at. */
export type IssueCode =
  | 'unknown-name'
  | 'unknown-species'
  | 'ambiguous-species'
  | 'unknown-operation'
  | 'unknown-parameter'
  | 'unknown-field'
  | 'unknown-trait'
  | 'unknown-fact'
  | 'unknown-source'
  | 'unknown-parent'
  | 'unknown-place'
  | 'missing'
  | 'wrong-type'
  | 'not-allowed'
  | 'out-of-bounds'
  | 'bad-date'
  | 'bad-pattern'
  | 'too-large'
  | 'circle'
  | 'duplicate'
  | 'incomplete'
  | 'impossible-rule'
  | 'example-fails'
  | 'boundary-example'
  | 'vanished'
  | 'bad-yaml'
  | 'bad-json'
  | 'impossible';

/** One thing that is wrong: where, what was found, what is accepted, and what may help. */
export interface Issue {
  readonly code: IssueCode;
  readonly path: string;
  readonly message: string;
  readonly found?: unknown;
  /** All that is accepted there, or of a long list the nearest to what was found. */
  readonly accepted?: readonly string[];
  readonly help?: string;
  readonly file?: string;
  readonly line?: number;
  readonly col?: number;
}

/**
 * The one error that sparebud throws, with all that is wrong at once.
 *
 * Use it when you want to show a mistake beside the field that holds it: each issue has a `path`.
 */
export class SparebudError extends Error {
  override readonly name = 'SparebudError';
  readonly code: IssueCode;
  readonly issues: readonly Issue[];

  constructor(issues: readonly Issue[]) {
    super(issues.map((issue) => (issue.help === undefined ? issue.message : `${issue.message}\n  ${issue.help}`)).join('\n'));
    this.code = issues[0]?.code ?? 'impossible';
    this.issues = Object.freeze([...issues]);
  }
}
