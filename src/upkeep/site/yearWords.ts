import { message } from '../../advice/message.js';
import type { Year, YearRun } from '../../advice/year.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { shortDate, type Wording } from '../../picture/yearPicture.js';
import { html, type Html } from './html.js';
import { link } from './page.js';

/** The rule whose title a message carries. */
const ruleOf = ({ because }: YearRun): string | undefined => because?.id.replace(/\.title$/, '');

/** What a picture of a year shows, in words: for each kind of work its stretches of days, and the rule that speaks loudest. */
export const yearWords = ({ operations }: Year, knowledge: Knowledge): Html => {
  const wording: Wording = (id, params = {}) => message(knowledge, id, params).text;
  return html`<table><thead><tr><th scope="col">work</th><th scope="col">days</th></tr></thead><tbody>${operations.map(({ op, label, runs }) => html`<tr><th scope="row">${link(`operations/${op}.html`, label)}</th><td><ul class="runs">${runs.map((run) => {
    const rule = ruleOf(run);
    return html`<li>${shortDate(run.from, wording)} – ${shortDate(run.to, wording)}: <span class="verdict ${run.verdict}">${wording(`year.legend.${run.settled ? run.verdict : 'unsettled'}`)}</span>${rule === undefined ? '' : html`, ${link(`rules/${rule}.html`, run.because!.text)}`}</li>`;
  })}</ul></td></tr>`)}</tbody></table>`;
};
