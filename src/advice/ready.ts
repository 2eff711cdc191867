import type { Proposal } from '../contract/types.generated.js';
import { type Residuals, residualsOf } from '../engine/residuals.js';
import type { Past } from '../facts/asked.js';
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
  const places: Places = { climateAt: climatesAt(stations), seasons: keptSeasons() };
  let builtOf: Parameters<typeof prepare>[3];
  let past: Past | undefined;
  return async (written) => {
    /* What is wrong is put into words only where something is. */
    const proposal = soundProposal(written, knowledge) ?? (await import('../knowledge/checkProposal.js')).checkProposal(written, knowledge);
    const place = proposal.where?.place;
    if (place !== undefined && !stations.some(({ id }) => id === place)) throw (await import('./unknownPlace.js')).unknownPlace(place, stations);
    const { structure, log, lastRepotted } = proposal.tree;
    const done = log !== undefined || lastRepotted !== undefined;
    /* What is worked out of a structure, and of earlier work, is loaded only where one is told, and then kept at hand: to ask for what is loaded takes time too. */
    if (structure !== undefined) builtOf ??= (await import('../facts/built/builtOf.js')).builtOf;
    if (done) past ??= (await import('../facts/past/past.js')).past;
    const prepared = prepare(proposal, knowledge, places, structure === undefined ? undefined : builtOf, done ? past : undefined);
    const left = await residuals(proposal.operation.op, prepared.variant, prepared.asked.traits);
    return { proposal, prepared, residuals: left, judge: judgeOf(prepared, left.rules, proposal.ignore) };
  };
};
