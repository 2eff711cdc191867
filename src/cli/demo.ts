import { fileURLToPath } from 'node:url';
import colors from 'picocolors';
import { createAdvisor } from '../advisor.js';
import { knowledge } from '../knowledge/bundled.js';
import { places } from '../season/places.js';
import { pageOf } from './page/page.js';
import { printAssessment } from './printAssessment.js';
import { readProposals } from './readProposals.js';

/* The main job on three invented trees: what is asked, then the answer as `sparebud ask` prints it. */
const advisor = createAdvisor(knowledge, { places });
const page = pageOf({ units: 'metric' });
const counts = new Map<string, number>();

process.stdout.write('Three invented trees in an invented garden: a young larch, an olive from a garden centre, an old trident maple.\n');
for (const proposal of await readProposals(fileURLToPath(new URL('../../docs/demo/three-trees.yaml', import.meta.url)))) {
  const { meta } = proposal as { readonly meta: { readonly say: string } };
  const assessment = await advisor.assess(proposal);
  counts.set(assessment.verdict, (counts.get(assessment.verdict) ?? 0) + 1);
  process.stdout.write(`\n${colors.dim('-'.repeat(page.width))}\n${colors.bold(`“${meta.say}”`)}\n\n${printAssessment({ ...assessment, cautions: assessment.cautions.slice(0, 2) }, knowledge, { ...page, full: false })}`);
}
process.stdout.write(`\n${[...counts].map(([verdict, count]) => `${count} ${verdict.replace('-', ' ')}`).join(', ')}. Every caution is shown by \`sparebud ask\`.\n`);
