import type { Proposal } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Asked, OfLogged, Past, Read } from '../asked.js';
import { deriveFacts } from '../deriveFacts.js';
import { known } from '../factValue.js';
import type { LogEntry } from './logEntries.js';

const workOfKnowledge = new WeakMap<Knowledge, ReadonlySet<string>>();

/** Facts that turn on the work, not on the tree that it is done to. */
const ofWork = (knowledge: Knowledge): ReadonlySet<string> => {
  const kept = workOfKnowledge.get(knowledge) ?? new Set(Object.keys(knowledge.facts).filter((id) => !/^(tree|species|place)\./.test(id)));
  workOfKnowledge.set(knowledge, kept);
  return kept;
};

/** The facts of logged work by itself, each worked out once for a trunk of one width. */
export const ofLogged: Past['ofLogged'] = (asked, here, lookAt, before) => {
  const logged = new Map<LogEntry, Map<number, { readonly read: Read; readonly looked: Set<string> }>>();
  /* What logged work was turns on the tree, not on the day or on the work that is asked about: as long as the tree is the same it is not worked out again. */
  let sameTree: boolean | undefined;
  const own: OfLogged = (entry, trunkMm) => {
    sameTree ??= before !== undefined && [...before.changed].every((id) => ofWork(asked.knowledge).has(id));
    if (sameTree) return before!.facts.ofLogged!(entry, trunkMm);
    const trunks = logged.get(entry) ?? new Map<number, { readonly read: Read; readonly looked: Set<string> }>();
    logged.set(entry, trunks);
    let work = trunks.get(trunkMm);
    if (work === undefined) {
      const looked = new Set<string>();
      const ofTree: Read = (id) => {
        if (id === 'tree.trunkDiameterMm') return known(trunkMm, 'given');
        looked.add(id);
        return here(id);
      };
      const proposal = { ...asked.proposal, tree: { ...asked.proposal.tree, log: [] }, operation: entry.written as unknown as Proposal['operation'] };
      const as: Asked = { ...asked, operation: asked.knowledge.operations[entry.op]!, proposal, day: entry.latest, tried: new Map() };
      work = { read: deriveFacts(as, { facts: { read: ofTree, inputsOf: () => new Set(), ofLogged: own }, changed: ofWork(asked.knowledge) }).read, looked };
      trunks.set(trunkMm, work);
    }
    work.looked.forEach(lookAt);
    return work.read;
  };
  return own;
};
