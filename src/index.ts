export { createAdvisor, type Advisor, type AdvisorOptions, type VerdictOnly } from './advisor.js';
export type { Assessment, Message, Operation, Proposal } from './contract/types.generated.js';
export { type Issue, type IssueCode, SparebudError } from './knowledge/error.js';
export type { Found } from './knowledge/findSpecies.js';
export type { FactWord, Knowledge, OperationWord, PhaseWord, Rule, SourceWord, Species, Trait, Value, Verdict } from './knowledge/knowledge.js';
export type { Station } from './season/station.js';
