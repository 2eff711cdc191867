import type { Proposal } from '../../contract/types.generated.js';
import { acceptedFor } from '../../knowledge/acceptedFor.js';
import { SparebudError } from '../../knowledge/error.js';
import { didYouMean } from '../../knowledge/nearest.js';
import { readStructure } from '../../structure/readStructure.js';
import type { Structure } from '../../structure/tree.js';

/**
 * The structure that a proposal tells, read; the branch that is worked on has to be one of it, unless the log speaks of it, where it has gone since.
 *
 * @throws SparebudError where the structure cannot be, or has no such branch
 */
export const structureAsked = ({ tree, operation }: Proposal): Structure => {
  const structure = readStructure(tree.structure!, tree);
  const asked = operation.branch;
  const ids = [...structure.branches.map(({ id }) => id), ...structure.trunks.map(({ id }) => id)];
  const logged = (tree.log ?? []).some((entry) => entry['branch'] === asked);
  if (asked === undefined || structure.branches.length === 0 || ids.includes(asked) || logged) return structure;
  throw new SparebudError([{
    code: 'unknown-name', path: 'operation.branch', message: `\`${asked.slice(0, 80)}\` in \`operation.branch\` is no branch of \`tree.structure\``, found: asked, accepted: acceptedFor(asked, ids),
    help: didYouMean(asked, ids) ?? 'name one of its branches, or tell this one too',
  }]);
};
