import { afterAll, describe, expect, test } from 'vitest';
import { vet } from '../../src/upkeep/vet.js';
import { type Changed, mended, removeTinyFolders, tinyFiles, tinyFolder } from '../knowledge/tinyFolder.js';

afterAll(removeTinyFolders);

/* Mistakes of the kinds that people make in a pull request: each is told once, where it stands, with what may help. */
interface Mistake {
  readonly slip: string;
  readonly changed: Changed;
  readonly file: string;
  /** The text that the reported line and column point at. */
  readonly at: string;
  readonly says: RegExp;
  readonly help: RegExp;
}

const alba = 'species/taxa/fictaria-alba.yaml';
const nigra = 'species/taxa/fictaria-x-nigra.yaml';
const tooMany = 'rules/roots/too-many.yaml';
const weak = 'rules/strain/weak.yaml';
const bare = 'rules/cut/bare-wood.yaml';
const sources = 'shared/sources.yaml';
const added = (path: string, text: string): Changed => ({ [path]: `${tinyFiles[path] ?? ''}${text}` });

const mistakes: readonly Mistake[] = [
  /* YAML itself */
  { slip: 'a tab for indentation', changed: mended(nigra, '  growth.minNightC: {', '\tgrowth.minNightC: {'), file: nigra, at: '\t', says: /tab/, help: /indentation/ },
  { slip: 'a colon in a plain sentence', changed: mended(weak, 'because: A weak tree has little to spare.', 'because: A weak tree: little to spare.'), file: weak, at: 'A weak tree', says: /./, help: /colons, commas and quotes/ },
  { slip: 'a brace left open', changed: mended(nigra, '{ is: 10, source: common-practice }', '{ is: 10, source: common-practice'), file: nigra, at: '', says: /./, help: /./ },
  { slip: 'the same trait twice', changed: mended(nigra, '  growth.minNightC:', '  budding.bareWood: { is: poor, source: common-practice }\n  growth.minNightC:'), file: nigra, at: 'budding.bareWood: { is: poor', says: /the same key stands twice/, help: /keep one/ },

  /* Traits and their values */
  { slip: 'a trait by another spelling', changed: mended(nigra, 'growth.minNightC', 'growth.minimumNightC'), file: nigra, at: 'growth.minimumNightC', says: /unknown trait `growth\.minimumNightC`/, help: /did you mean `growth\.minNightC`|accepted/ },
  { slip: 'a trait under the name that rules call it by', changed: mended(nigra, 'growth.minNightC', 'species.growth.minNightC'), file: nigra, at: 'species.growth.minNightC', says: /unknown trait `species\.growth\.minNightC`/, help: /did you mean `growth\.minNightC`/ },
  { slip: 'a decimal comma', changed: mended(alba, 'either: [0.2, 0.4]', "either: ['0,2', 0.4]"), file: alba, at: "'0,2'", says: /`0,2` is a string/, help: /number/ },
  { slip: 'a unit behind the number', changed: mended(nigra, 'is: 10', 'is: 10 C'), file: nigra, at: 'is: 10 C', says: /`10 C` is a string/, help: /number/ },
  { slip: 'a percentage for a share', changed: mended(alba, 'either: [0.2, 0.4]', 'either: [20, 0.4]'), file: alba, at: '20', says: /`20` is out of bounds/, help: /0 to 1/ },
  { slip: 'yes for true', changed: mended(bare, '{ species: fictaria-alba, cut.foliageLeft: false }', '{ species: fictaria-alba, cut.foliageLeft: no }'), file: bare, at: 'cut.foliageLeft: no', says: /`no` is a string/, help: /boolean/ },
  { slip: 'one phase where a list is meant', changed: added(nigra, '  roots.phases: { is: bud-burst, source: common-practice }\n'), file: nigra, at: 'is: bud-burst', says: /`bud-burst` is a string/, help: /list, as in `\[bud-burst\]`/ },
  { slip: 'a value without its braces', changed: mended(nigra, '{ is: none, source: common-practice }', 'none'), file: nigra, at: 'budding.bareWood', says: /`none` is a string/, help: /object/ },
  { slip: 'a trait that only repeats the parent', changed: added(nigra, '  roots.phases: { is: [bud-swell], source: common-practice }\n'), file: nigra, at: 'roots.phases', says: /`roots\.phases` says what `invented-broadleaf` says/, help: /--mend/ },
  { slip: 'both source and sources', changed: mended(nigra, '{ is: none, source: common-practice }', '{ is: none, source: common-practice, sources: [a-handbook] }'), file: nigra, at: 'sources', says: /both `source` and `sources`/, help: /keep `sources`/ },
  { slip: 'two values where sources disagree, and one source', changed: mended(alba, 'either: [0.2, 0.4], sources: [a-handbook, another-handbook]', 'either: [0.2, 0.4], source: a-handbook'), file: alba, at: 'roots.maxRemoved', says: /`sources` is missing/, help: /add `sources`/ },
  { slip: 'a source that is not in the list yet', changed: mended(nigra, '{ is: none, source: common-practice }', '{ is: none, source: handbook-1999 }'), file: nigra, at: 'source: handbook-1999', says: /unknown source `handbook-1999`/, help: /shared\/sources\.yaml/ },

  /* Names and files */
  { slip: 'a common name for the parent', changed: mended(nigra, 'parent: fictaria', 'parent: Fictaria'), file: nigra, at: 'parent', says: /unknown parent `Fictaria`/, help: /did you mean `fictaria`/ },
  { slip: 'a file that is called otherwise than its species', changed: { 'species/taxa/Fictaria_rubra.yaml': 'name: Fictaria rubra\nparent: fictaria\ntraits:\n  budding.bareWood: { is: poor, source: common-practice }\n' }, file: 'species/taxa/Fictaria_rubra.yaml', at: 'name', says: /the file of `Fictaria rubra` is called `Fictaria_rubra`/, help: /call it fictaria-rubra\.yaml/ },
  { slip: 'a species among the genera', changed: { [nigra]: null, 'species/genera/fictaria-x-nigra.yaml': tinyFiles[nigra]! }, file: 'species/genera/fictaria-x-nigra.yaml', at: 'name', says: /`Fictaria × nigra` is no genus/, help: /species\/taxa/ },
  { slip: 'a synonym that another species has', changed: mended(nigra, 'parent: fictaria', 'parent: fictaria\nsynonyms: [Fictaria nivea]'), file: nigra, at: 'Fictaria nivea', says: /`Fictaria nivea` is a synonym of `fictaria-alba` too/, help: /one species/ },
  { slip: 'a species with a file that its parent still lists', changed: added('species/taxa/fictaria-parva.yaml', 'name: Fictaria parva\nparent: fictaria\ntraits:\n  budding.bareWood: { is: poor, source: common-practice }\n'), file: alba, at: 'fictaria-parva', says: /`fictaria-parva` has a file of its own/, help: /members/ },
  { slip: 'a renamed rule that others may have stored', changed: { [weak]: null, 'rules/strain/weak-tree.yaml': tinyFiles[weak]!, 'shared/published.yaml': 'rules: [strain/weak]\n' }, file: 'shared/renames.yaml', at: '', says: /`strain\/weak` was published among rules and is gone/, help: /from, to, since/ },

  /* Rules */
  { slip: 'a fact by another spelling', changed: mended(weak, '  - tree.vigour: weak\n', '  - tree.vigor: weak\n'), file: weak, at: 'tree.vigor', says: /unknown fact `tree\.vigor`/, help: /did you mean `tree\.vigour`/ },
  { slip: 'a comparison by its sign', changed: mended(tooMany, '{ above: { trait: roots.maxRemoved } }', '{ ">": 0.4 }'), file: tooMany, at: '">"', says: /`>` does not fit/, help: /above/ },
  { slip: 'a rule for one species', changed: mended(bare, '  - species.budding.bareWood: [poor, none]\n', '  - species.budding.bareWood: [poor, none]\n  - tree.species: { not: fictaria-alba }\n'), file: bare, at: 'tree.species', says: /the rule names a species/, help: /trait/ },
  { slip: 'a title that tells the whole story', changed: mended(weak, 'title: A weak tree is spared', 'title: A weak tree should be spared all work until it is strong'), file: weak, at: 'title', says: /more than eight words/, help: /at most eight/ },
  { slip: 'a reason that rambles', changed: mended(weak, 'because: A weak tree has little to spare.', 'because: A weak tree has little to spare. It grows slowly. Wait a year.'), file: weak, at: 'because', says: /3 sentences/, help: /two at most/ },
  { slip: 'a fact in the text that there is not', changed: mended(tooMany, '{roots.shareRemoved}', '{roots.share}'), file: tooMany, at: 'because', says: /unknown fact `roots\.share` in the text/, help: /roots\.shareRemoved|shared\/facts/ },
  { slip: 'an exception without its reason', changed: mended(weak, '    because: The whole season lies ahead.\n', ''), file: weak, at: 'when: [season.phase', says: /`because` is missing/, help: /add `because`/ },
  { slip: 'an operation by its trade name', changed: mended(tooMany, 'operations: [repot]', 'operations: [root pruning]'), file: tooMany, at: 'root pruning', says: /`root pruning` is not/, help: /accepted|did you mean/ },
  { slip: 'a rule that covers one that is worse', changed: mended(weak, 'costs: tree\n', 'costs: tree\ncovers: [roots/too-many]\n'), file: weak, at: 'roots/too-many', says: /`roots\/too-many` is worse than the rule that covers it/, help: /as bad or milder/ },
  { slip: 'a threshold that was moved, and its examples not', changed: mended(tooMany, '{ above: { trait: roots.maxRemoved } }', '{ above: { trait: roots.maxRemoved, plus: -0.05 } }'), file: tooMany, at: '{ given: { species.roots.maxRemoved: 0.4, roots.shareRemoved: 0.4 }', says: /example 2 says `never`, the rule fires `certainly`/, help: /mend the rule or the example/ },
  { slip: 'a verdict that was changed, and its example not', changed: mended(weak, 'season.phase: dormant }, fires: certainly }', 'season.phase: dormant }, fires: certainly, verdict: advise-against }'), file: weak, at: 'verdict: advise-against }', says: /example 1 says `advise-against`, the rule says `risky`/, help: /mend/ },
  { slip: 'the same example twice', changed: added(weak, '  - { given: { season.phase: dormant, tree.vigour: weak }, fires: certainly }\n'), file: weak, at: '{ given: { season.phase: dormant', says: /example 4 gives what example 1 gives/, help: /keep one/ },
  { slip: 'an example of a species that there is not', changed: mended(bare, '{ species: fictaria-alba, cut.foliageLeft: false }', '{ species: Fictaria alba, cut.foliageLeft: false }'), file: bare, at: 'species: Fictaria alba', says: /unknown species `Fictaria alba`/, help: /did you mean `fictaria-alba`/ },

  /* Scaffolds and sources */
  { slip: 'a place of the scaffold that was not filled in', changed: mended(weak, 'title: A weak tree is spared', 'title: TODO what goes wrong'), file: weak, at: 'title', says: /`title` is still to be written/, help: /what goes wrong/ },
  { slip: 'traits that were left as comments', changed: { 'species/taxa/fictaria-rubra.yaml': 'name: Fictaria rubra\nparent: fictaria\ntraits:\n  #~ budding.bareWood: { is: good, source: a-handbook }\n' }, file: 'species/taxa/fictaria-rubra.yaml', at: 'name', says: /nothing differs from its parent/, help: /asParent/ },
  { slip: 'a source without the setting that it studied', changed: mended(sources, 'grade: extension, studied: nursery', 'grade: extension'), file: sources, at: 'a-handbook', says: /`studied` is missing/, help: /add `studied`/ },
  { slip: 'a source of a kind that there is not', changed: mended(sources, 'grade: extension, studied: nursery', 'grade: website, studied: nursery'), file: sources, at: 'grade: website', says: /`website` is not accepted/, help: /journal/ },
];

const textAt = (changed: Changed, file: string, line: number, col: number): string =>
  (({ ...tinyFiles, ...changed })[file] ?? '').split('\n').slice(line - 1).join('\n').slice(col - 1);

describe('a slip in a pull request is told once, with its line and column, and with what may help', () => {
  test.each(mistakes.map((each): [string, Mistake] => [each.slip, each]))('%s', async (_, { changed, file, at, says, help }) => {
    const { issues } = await vet(tinyFolder(changed));
    expect(issues.map((issue) => `${issue.file}:${issue.line}:${issue.col}: ${issue.message}`)).toHaveLength(1);
    const [issue] = issues;
    expect(issue!.file).toBe(file);
    expect(issue!.message).toMatch(says);
    expect(issue!.message).not.toMatch(/\n/);
    expect(issue!.help).toMatch(help);
    expect(textAt(changed, file, issue!.line!, issue!.col!).slice(0, at.length)).toBe(at);
  });
});
