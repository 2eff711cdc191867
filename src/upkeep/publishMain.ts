import { writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { readKnowledge } from '../knowledge/read/readKnowledge.js';
import { publishedIds } from './vanishedIds.js';

/* `npm run publish-ids`, at a release: the ids that others may store from now on. */
writeFileSync('shared/published.yaml', `# Ids as they were last published: one that goes needs an entry in renames.yaml.\n${stringify(publishedIds(readKnowledge(process.cwd())))}`);
