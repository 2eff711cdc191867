import type { Proposal } from '../../src/contract/types.generated.js';

/** The same question asked on another day by someone who wrote down what the tree showed on the first. */
export const onAnotherDay = (proposal: Proposal, date: string): Proposal => {
  const { phase, ...tree } = proposal.tree;
  const log = [...(tree.log ?? []), ...(phase === undefined ? [] : [{ date: proposal.date!, saw: phase }])];
  return { ...proposal, date, tree: { ...tree, ...(log.length === 0 ? {} : { log }) } } as Proposal;
};
