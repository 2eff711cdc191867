import type { Knowledge } from './knowledge.js';
import { groups } from './published/groups.data.js';
import { knowledgeOf } from './published/knowledgeOf.js';

/** The knowledge that comes with the package: flat, validated when it was built, frozen. Remarks and the examples of rules stand apart, in `sparebud/knowledge/notes`. */
export const knowledge: Knowledge = /* @__PURE__ */ knowledgeOf(...groups);
