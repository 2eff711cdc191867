import type { Proposal } from '../contract/types.generated.js';
import { type Residuals, residualsOf } from '../engine/residuals.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { soundProposal } from '../knowledge/soundProposal.js';
import { climatesAt } from '../season/climatesAt.js';
import { keptSeasons } from '../season/keptSeasons.js';
import type { Station } from '../season/station.js';
import { type Judge, judgeOf } from './judge.js';
import { type Places, prepare, type Prepared } from './prepare.js';

/** A proposal that has been checked, prepared and can be judged. */
export interface Ready {
  readonly proposal: Proposal;
  readonly prepared: Prepared;
  readonly residuals: Residuals;
  readonly judge: Judge;
}

/** Makes proposals ready, and remembers what it worked out of each species and place. */
export const readyFor = (knowledge: Knowledge, stations: readonly Station[]): ((written: unknown) => Promise<Ready>) => {
  const residuals = residualsOf(knowledge);
  const places: Places = { stations, climateAt: climatesAt(stations), seasons: keptSeasons() };
  return async (written) => {
    /* What is wrong is put into words only where something is. */
    const proposal = soundProposal(written, knowledge) ?? (await import('../knowledge/checkProposal.js')).checkProposal(written, knowledge);
    /* What is worked out of a structure is loaded only where one is told. */
    const builtOf = proposal.tree.structure === undefined ? undefined : (await import('../facts/built/builtOf.js')).builtOf;
    const prepared = prepare(proposal, knowledge, places, builtOf);
    const left = await residuals(proposal.operation.op, prepared.variant, prepared.asked.traits);
    return { proposal, prepared, residuals: left, judge: judgeOf(prepared, left.rules, proposal.ignore) };
  };
};
