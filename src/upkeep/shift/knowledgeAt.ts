import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { flatten } from '../../knowledge/flatten.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { readParts } from '../../knowledge/read/readKnowledge.js';
import { gitLines } from '../gitLines.js';

/**
 * The knowledge of a folder as it stood at a git revision, read through a temporary folder and an index of its own: the clone is not touched.
 * What today's schemas find wrong with it is let pass: it met those of its day.
 *
 * @throws SparebudError where git does not know the revision
 */
export const knowledgeAt = (root: string, rev: string): Knowledge => {
  const folder = mkdtempSync(join(tmpdir(), 'knowledge-at-'));
  try {
    const env = { GIT_INDEX_FILE: join(folder, 'index') };
    const [prefix = ''] = gitLines(root, ['rev-parse', '--show-prefix']);
    gitLines(root, ['read-tree', `${rev}^{tree}`], { env });
    gitLines(join(root, gitLines(root, ['rev-parse', '--show-cdup'])[0] ?? ''), ['checkout-index', '--all', `--prefix=${folder}/`], { env });
    return flatten(readParts(join(folder, prefix)).parts);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
