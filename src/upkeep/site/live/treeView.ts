/// <reference lib="dom" />
import type { Advisor, Proposal } from 'sparebud';
import { treePicture } from 'sparebud/picture';
import { el } from './el.js';
import { picture, wordingOf } from './picture.js';
import { verdictMark } from './verdictMark.js';

/** The sample of docs/demo: an invented tree, with the aim that branches are kept for. */
interface Sample {
  readonly tree: Proposal['tree'];
  readonly where?: Proposal['where'];
  readonly date: string;
}

/** The invented tree as a picture, with the branches that are best kept, and the sittings in which the others go. */
export const treeView = async (advisor: Advisor, sample: Sample): Promise<readonly HTMLElement[]> => {
  const { sets, aim } = await advisor.keepers(sample);
  const best = sets[0];
  return [
    el('p', {}, aim.text),
    picture(treePicture(sample.tree, wordingOf(advisor.knowledge), best), 'Picture of the invented tree'),
    ...(best === undefined ? [] : [el('ul', {}, ...best.stages.map(({ date, remove, verdict, because }) => el('li', {}, `${date}, ${remove.length === 0 ? 'the trunk' : remove.join(', ')}: `, verdictMark(verdict), `. ${because.text}`)))]),
  ];
};
