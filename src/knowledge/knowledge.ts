import type { Aims } from './aims.js';

/** The shape of knowledge once it is flat: what `sparebud/knowledge` holds and the advisor is made from. */

export type Value = string | number | boolean | readonly string[];
export type Verdict = 'allowed' | 'risky' | 'advise-against';
export type Stakes = 'tree' | 'branch' | 'flowers' | 'time' | 'looks';
export type FactType = 'choice' | 'number' | 'boolean' | 'list' | 'range' | 'text' | 'records';

/** A fact or trait, as shared/facts.yaml declares it. */
export interface FactWord {
  readonly id: string;
  readonly type: FactType;
  readonly values?: readonly string[];
  readonly unit?: string;
  /** A list of the values of this other fact. */
  readonly of?: string;
  readonly bounds?: readonly [number, number];
  readonly whole?: boolean;
  /** A short name, where the meaning is long. */
  readonly label?: string;
  readonly meaning: string;
  readonly given?: string;
  /** Whoever does the work is free to do otherwise: a change may be offered. */
  readonly chosen?: boolean;
  readonly from?: readonly string[];
  /** What is taken where nothing tells it, by operation; `default` for the others. */
  readonly assume?: Readonly<Record<string, Value>>;
  readonly ask?: string;
  readonly worse?: 'low' | 'high';
  readonly tries?: readonly number[];
  readonly optional?: boolean;
}

export interface OperationWord {
  readonly id: string;
  readonly label: string;
  /** The kind of work that it is: `branches`, `roots` …, named by `group.<id>` of the wording. */
  readonly group: string;
  readonly parameters: readonly string[];
  /** The ways in which it is usually done: what a year is drawn with. */
  readonly usual: readonly Readonly<Record<string, Value>>[];
  readonly aliases: Readonly<Record<string, Readonly<Record<string, Value>>>>;
  readonly strain: {
    readonly least: 'none' | 'light' | 'hard';
    readonly lightFrom?: Readonly<Record<string, number>>;
    readonly hardFrom?: Readonly<Record<string, number>>;
    readonly lightFor?: Readonly<Record<string, readonly string[]>>;
    readonly hardFor?: Readonly<Record<string, readonly string[]>>;
  };
  readonly daysNeeded?: { readonly days: number; readonly sources: readonly string[] };
  readonly leavesWound: boolean;
  readonly sheds: boolean;
  readonly instead: readonly { readonly op: string; readonly set: Readonly<Record<string, Value>> }[];
  /** How the tree stands once it is done, beside its log. */
  readonly leaves: {
    readonly growing?: Left;
    readonly standing?: Left;
    readonly rootState?: Left;
    readonly repotted?: boolean;
    /** The branch that it names is gone, or dead where a stub or deadwood is left. */
    readonly takesBranch?: boolean;
    /** It stays on the tree, dead. */
    readonly branchStays?: boolean;
    /** What stands above the height that it names is gone. */
    readonly takesTop?: boolean;
  };
}

/** A state that an operation leaves: always the same, or as one of its parameters says. */
export type Left = string | { readonly parameter: string; readonly as?: Readonly<Record<string, string>> };

export interface PhaseWord {
  readonly id: string;
  readonly models: readonly string[];
  readonly bbch: readonly [number, number];
  readonly label: string;
  /** How a text says that a tree is in it: `swelling its buds`. */
  readonly being: string;
  readonly meaning: string;
  readonly seen: string;
}

export interface SourceWord {
  readonly id: string;
  readonly title: string;
  readonly author?: string;
  readonly year?: number;
  readonly in?: string;
  readonly from: 'read' | 'memory' | 'practice';
  readonly extent?: string;
  readonly grade: 'journal' | 'standard' | 'extension' | 'agency' | 'press' | 'trade' | 'law' | 'practice' | 'data';
  readonly studied: string;
  readonly via?: string;
  readonly note?: string;
}

export type Regulation = Readonly<Record<string, string | number>>;

/** A trait with its source, and the level of the chain that it came from. */
export interface Trait {
  readonly is?: Value | readonly number[] | readonly Regulation[];
  readonly either?: readonly (string | number | boolean)[];
  readonly sources: readonly string[];
  readonly note?: string;
  readonly level: string;
  /** The pack that it came from. */
  readonly pack?: string;
}

export interface Species {
  readonly id: string;
  readonly name: string;
  readonly author?: string;
  readonly rank: 'group' | 'genus' | 'taxon' | 'member';
  readonly parent?: string;
  readonly commonNames: Readonly<Record<string, readonly string[]>>;
  readonly synonyms: readonly string[];
  readonly traits: Readonly<Record<string, Trait>>;
}

/** A rule's condition as it is written: see the schema of rules. */
export type WrittenCondition = Readonly<Record<string, unknown>>;

export interface RuleExample {
  readonly operation?: string;
  readonly given: Readonly<Record<string, Value>>;
  readonly fires: 'certainly' | 'possibly' | 'never';
  /** Where it fires for certain: what the rule then says. */
  readonly verdict?: 'risky' | 'advise-against';
}

export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly operations: readonly string[] | 'all';
  readonly verdict: 'risky' | 'advise-against';
  readonly costs: Stakes;
  readonly when: readonly WrittenCondition[];
  readonly unless: readonly { readonly when: readonly WrittenCondition[]; readonly because: string; readonly sources: readonly string[] }[];
  readonly because: string;
  readonly instead?: { readonly wait?: string | readonly string[]; readonly do?: Readonly<Record<string, Value>>; readonly set?: Readonly<Record<string, Value>> };
  readonly covers: readonly string[];
  readonly reverses: readonly string[];
  readonly note?: string;
  readonly sources: readonly string[];
  readonly examples: readonly RuleExample[];
  /** The pack that it came from. */
  readonly pack?: string;
}

export interface Alert {
  readonly disease: string;
  readonly regions: readonly string[];
  readonly from: string;
  readonly to: string;
  /** Where it holds, for those who do not tell their region: least and most latitude, least and most longitude. */
  readonly box?: readonly [number, number, number, number];
  readonly sources: readonly string[];
  readonly note?: string;
}

/** What is said of some work where its conditions hold: a caution, whatever the verdict. */
export interface Caution {
  readonly id: string;
  readonly operations: readonly string[] | 'all';
  readonly when: readonly WrittenCondition[];
  readonly sources: readonly string[];
}

/** Work that follows other work, so many days after it; a figure may be a trait of the species. */
export interface FollowUp {
  readonly id: string;
  readonly operations: readonly string[] | 'all';
  readonly when: readonly WrittenCondition[];
  readonly days: readonly [Figure, Figure];
  readonly operation?: Readonly<Record<string, Value>> & { readonly op: string };
  /** The phases in which its days count; all where it does not say. */
  readonly through?: readonly string[];
  /** For so many days after its days are over it stays due. */
  readonly keeps?: number;
  readonly sources: readonly string[];
}

/** Work that comes round, and when: shared/chores.yaml. */
export interface Chore {
  readonly id: string;
  /** The operation of its first way: what it is asked by. */
  readonly operations: readonly string[];
  readonly ways: readonly (Readonly<Record<string, Value>> & { readonly op: string })[];
  readonly when: readonly WrittenCondition[];
  /** Other operations that do it too. */
  readonly doneBy: readonly string[];
  readonly told: readonly string[];
  readonly leadDays?: number;
  readonly lasts?: number;
  readonly keeps?: number;
  readonly sources: readonly string[];
}

export type Figure = number | { readonly trait: string; readonly times: number };

/** Factors by which growth in pots differs from open ground: shared/growing.yaml. */
export interface Growing {
  readonly growing: Readonly<Record<string, number>>;
  readonly vigour: Readonly<Record<string, number>>;
  readonly ringMm: Readonly<Record<string, number>>;
  readonly callusPerRing: number;
  readonly woundPerBranch: Readonly<Record<string, number>>;
  readonly tipsToFoliage: Readonly<Record<string, number>>;
  readonly bendStrain: { readonly firm: number; readonly severe: number };
  readonly wireMark: { readonly depthMm: number; readonly peak: number };
  readonly berthC: Readonly<Record<string, readonly [number, number]>>;
  readonly shelterC: Readonly<Record<string, number>>;
  readonly recoveryWeeks: Readonly<Record<string, readonly [number, number]>>;
  readonly strain: { readonly light: number; readonly hard: number; readonly halvesInGrowingDays: number };
  readonly stubDryDays: number;
  readonly twigMm: number;
  readonly sources: readonly string[];
}

/** A pack of species and rules that was put on, and the rules that it silenced. */
export interface PackWord {
  readonly namespace: string;
  readonly version?: string;
  readonly silenced?: readonly string[];
}

export interface Knowledge {
  readonly schema: 'knowledge/1';
  readonly version: string;
  readonly hash: string;
  readonly facts: Readonly<Record<string, FactWord>>;
  readonly operations: Readonly<Record<string, OperationWord>>;
  readonly phases: Readonly<Record<string, PhaseWord>>;
  readonly sources: Readonly<Record<string, SourceWord>>;
  readonly species: Readonly<Record<string, Species>>;
  readonly rules: Readonly<Record<string, Rule>>;
  readonly alerts: readonly Alert[];
  readonly cautions: Readonly<Record<string, Caution>>;
  readonly followUps: Readonly<Record<string, FollowUp>>;
  readonly chores: Readonly<Record<string, Chore>>;
  /** How many days ahead a chore counts as soon. */
  readonly soonDays: number;
  /** Done within so many days, a chore is not due again. */
  readonly againDays: number;
  readonly growing: Growing;
  readonly aims: Aims;
  readonly renames: readonly { readonly from: string; readonly to?: string; readonly since: string }[];
  readonly wording: Readonly<Record<string, string>>;
  /** What was put on it at run time, in order. */
  readonly packs?: readonly PackWord[];
}
