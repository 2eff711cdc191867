import { closed, oneOf, type Schema, text } from './schema.js';

/** The schema of one source. */
export const sourceSchema: Schema = /* @__PURE__ */ closed(
  {
    title: text(), author: text(), year: { type: 'integer' }, in: text(), from: oneOf(['read', 'memory', 'practice']), extent: oneOf(['full', 'part', 'abstract', 'table', 'quoted']),
    grade: oneOf(['journal', 'standard', 'extension', 'agency', 'press', 'trade', 'law', 'practice', 'data']),
    studied: oneOf(['container', 'nursery', 'landscape', 'forest', 'orchard', 'lab', 'garden', 'seed', 'law', 'practice', 'mixed']), via: text(), note: text(),
  },
  ['title', 'from', 'grade', 'studied'],
);
