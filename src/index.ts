export { createAdvisor, type Advisor, type AdvisorOptions, type VerdictOnly, type YearQuestion } from './advisor.js';
export { mergePatch } from './advice/mergePatch.js';
export type { Comparison, Variant } from './advice/compare.js';
export type { Due, DueItem } from './advice/due/due.js';
export type { Explained, ExplainedFinding } from './advice/explain.js';
export type { Plan, PlanStep } from './advice/plan/plan.js';
export type { CollectedTree, Collection } from './knowledge/checkCollection.js';
export type { KeepersQuestion } from './knowledge/checkKeepers.js';
export type { PlanQuestion } from './knowledge/checkPlan.js';
export type { Keepers, KeepersPart, KeepersSet, KeepersStage } from './advice/keepers/keepers.js';
export type { Year, YearRun } from './advice/year.js';
export type { Assessment, Message, Operation, Proposal } from './contract/types.generated.js';
export type { Aim, Aims, Term, Terms } from './knowledge/aims.js';
export { type Issue, type IssueCode, SparebudError } from './knowledge/error.js';
export type { Found } from './knowledge/findSpecies.js';
export type { OperationForm, ParameterForm } from './knowledge/operationForms.js';
export type {
  Alert, Caution, FactType, FactWord, Figure, FollowUp, Growing, Knowledge, OperationWord, PhaseWord, Regulation, Rule, RuleExample, SourceWord, Species, Stakes, Trait, Value, Verdict, WrittenCondition,
} from './knowledge/knowledge.js';
export type { Station } from './season/station.js';
