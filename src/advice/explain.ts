import type { Assessment, Message } from '../contract/types.generated.js';
import { severity } from '../engine/verdict.js';
import { SparebudError, type Issue } from '../knowledge/error.js';
import type { Knowledge, Verdict } from '../knowledge/knowledge.js';
import { nowCalled } from '../knowledge/nowCalled.js';
import { knowledgeName } from './basis.js';
import { message } from './message.js';

/** What an answer says of one rule. */
interface Found {
  readonly verdict: Verdict;
  readonly fires: 'certainly' | 'possibly';
}

/** What a kept answer and today's say of one rule. */
export interface ExplainedFinding {
  /** The rule's id as it was kept, or as it is now where it did not fire then. */
  readonly rule: string;
  /** What it is called now, where that is something else. */
  readonly renamedTo?: string;
  /** `removed`: there is no such rule now; `gone`: there is, and it does not fire now; `new`: it fires now and did not then. */
  readonly change: 'same' | 'removed' | 'gone' | 'new' | 'worse' | 'milder' | 'more-certain' | 'less-certain';
  readonly then?: Found;
  readonly now?: Found;
  readonly why: Message;
}

/** A kept answer beside what the same question is answered today. */
export interface Explained {
  readonly schema: 'explained/1';
  /** The name of the knowledge that answered then, and of this. */
  readonly knowledge: { readonly then: string; readonly now: string; readonly same: boolean };
  readonly species: { readonly then: string; readonly now?: string };
  readonly verdict: { readonly then: Verdict; readonly now?: Verdict };
  readonly range: { readonly then: readonly Verdict[]; readonly now?: readonly Verdict[] };
  /** In the order in which they were kept, then what is new. */
  readonly findings: readonly ExplainedFinding[];
  /** Why the question cannot be asked today. */
  readonly issues?: readonly Issue[];
}

/** The schema that answers are kept in today. */
const readable = 'assessment/1';

const checkKept = (kept: unknown): Assessment => {
  const { schema, proposal, findings, basis } = (typeof kept === 'object' && kept !== null ? kept : {}) as Readonly<Record<string, unknown>>;
  const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null;
  if (schema !== readable || !isObject(proposal) || !Array.isArray(findings) || !isObject(basis)) {
    throw new SparebudError([{ code: 'wrong-type', path: 'schema', message: `not a kept assessment: \`${String(schema).slice(0, 40)}\` in \`schema\``, found: schema, accepted: [readable], help: 'give an answer of `assess` as it was returned' }]);
  }
  return kept as Assessment;
};

const changeOf = (then: Found, now: Found): ExplainedFinding['change'] => {
  if (severity(now.verdict) !== severity(then.verdict)) return severity(now.verdict) > severity(then.verdict) ? 'worse' : 'milder';
  if (now.fires !== then.fires) return now.fires === 'certainly' ? 'more-certain' : 'less-certain';
  return 'same';
};

const foundIn = ({ verdict, fires }: Assessment['findings'][number]): Found => ({ verdict, fires });

const said = (knowledge: Knowledge, change: ExplainedFinding['change'], title: string): Message => message(knowledge, `explained.${change}`, { title });

/**
 * What has changed since an answer was kept: its question is asked again of this knowledge, and each rule it rested on is looked up.
 *
 * @throws SparebudError `wrong-type` where it is no assessment of a schema that can be read
 */
export const explain = async (assess: (proposal: unknown) => Promise<Assessment>, knowledge: Knowledge, kept: unknown): Promise<Explained> => {
  const then = checkKept(kept);
  const name = knowledgeName(knowledge);
  let now: Assessment | undefined;
  let issues: readonly Issue[] | undefined;
  try {
    now = await assess(then.proposal);
  } catch (cause) {
    if (!(cause instanceof SparebudError)) throw cause;
    issues = cause.issues;
  }
  const firing = new Map((now?.findings ?? []).map((finding) => [finding.rule, finding]));
  const findings: ExplainedFinding[] = [];
  for (const finding of then.findings) {
    const id = nowCalled(knowledge, finding.rule);
    const rule = knowledge.rules[id];
    const today = firing.get(id);
    firing.delete(id);
    const change = rule === undefined ? 'removed' : today === undefined ? 'gone' : changeOf(foundIn(finding), foundIn(today));
    /* Where the question cannot be asked today, only what became of the rule itself can be told. */
    if (now === undefined && rule !== undefined) continue;
    findings.push({ rule: finding.rule, ...(id === finding.rule || rule === undefined ? {} : { renamedTo: id }), change, then: foundIn(finding), ...(today === undefined ? {} : { now: foundIn(today) }), why: said(knowledge, change, today?.title.text ?? rule?.title ?? finding.title.text) });
  }
  for (const finding of firing.values()) findings.push({ rule: finding.rule, change: 'new', now: foundIn(finding), why: said(knowledge, 'new', finding.title.text) });
  return {
    schema: 'explained/1',
    knowledge: { then: then.basis.knowledge, now: name, same: then.basis.knowledge === name },
    species: { then: then.basis.species, ...(now === undefined ? {} : { now: now.basis.species }) },
    verdict: { then: then.verdict, ...(now === undefined ? {} : { now: now.verdict }) },
    range: { then: then.range, ...(now === undefined ? {} : { now: now.range }) },
    findings,
    ...(issues === undefined ? {} : { issues }),
  };
};
