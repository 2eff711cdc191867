import { type Judged, judgeOf } from '../../src/advice/judge.js';
import { type Places, prepare } from '../../src/advice/prepare.js';
import { residualsOf } from '../../src/engine/residuals.js';
import { checkProposal } from '../../src/knowledge/checkProposal.js';
import type { Knowledge } from '../../src/knowledge/knowledge.js';
import { climatesAt } from '../../src/season/climatesAt.js';
import type { Station } from '../../src/season/station.js';

/** Judges proposals without the advice around the verdict: what an assessment's verdict, range and findings are made from. */
export const judgeWith = (knowledge: Knowledge, stations: readonly Station[]): ((written: unknown) => Promise<Judged>) => {
  const residuals = residualsOf(knowledge);
  const places: Places = { stations, climateAt: climatesAt(stations) };
  return async (written) => {
    const proposal = checkProposal(written, knowledge);
    const prepared = prepare(proposal, knowledge, places);
    const { rules } = await residuals(proposal.operation.op, prepared.variant, prepared.asked.traits);
    return await judgeOf(prepared, rules, proposal.ignore)();
  };
};
