import { afterAll, describe, expect, test } from 'vitest';
import { vet } from '../../src/upkeep/vet.js';
import { type Changed, mended, tinyFiles, removeTinyFolders, tinyFolder } from '../knowledge/tinyFolder.js';

afterAll(removeTinyFolders);

test('whole knowledge has no faults', async () => {
  const { issues, species, rules, sources } = await vet(tinyFolder());
  expect(issues).toEqual([]);
  expect({ species, rules, sources }).toEqual({ species: 4, rules: 3, sources: 3 });
});

interface Broken {
  readonly fault: string;
  readonly changed: Changed;
  readonly code: string;
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

const broken: readonly Broken[] = [
  { fault: 'an unknown trait', changed: mended(nigra, 'budding.bareWood', 'budding.bareWod'), code: 'unknown-trait', file: nigra, at: 'budding.bareWod', says: /unknown trait `budding\.bareWod`/, help: /did you mean `budding\.bareWood`/ },
  { fault: 'a trait of the wrong type', changed: mended(nigra, 'is: 10', 'is: ten'), code: 'wrong-type', file: nigra, at: 'is: ten', says: /`ten` is a string/, help: /number/ },
  { fault: 'a trait value outside its list', changed: mended(nigra, 'is: none', 'is: nonne'), code: 'not-allowed', file: nigra, at: 'is: nonne', says: /`nonne` is not accepted/, help: /did you mean `none`/ },
  { fault: 'a trait value out of its bounds', changed: mended(nigra, 'is: 10', 'is: 99'), code: 'out-of-bounds', file: nigra, at: 'is: 99', says: /`99` is out of bounds/, help: /-10 to 25/ },
  { fault: 'a trait without a source', changed: mended(nigra, '{ is: none, source: common-practice }', '{ is: none }'), code: 'missing', file: nigra, at: 'budding.bareWood', says: /`budding\.bareWood` has no source/, help: /source/ },
  { fault: 'a rule without sources', changed: mended(tooMany, 'sources: [a-handbook]\n', ''), code: 'missing', file: tooMany, at: 'title', says: /`sources` is missing/, help: /add `sources`/ },
  { fault: 'an unknown source of a trait', changed: mended(nigra, '{ is: none, source: common-practice }', '{ is: none, source: a-handbok }'), code: 'unknown-source', file: nigra, at: 'source: a-handbok', says: /unknown source `a-handbok`/, help: /did you mean `a-handbook`/ },
  { fault: 'an unknown source of a rule', changed: mended(tooMany, 'sources: [a-handbook]', 'sources: [nowhere-at-all]'), code: 'unknown-source', file: tooMany, at: 'sources', says: /unknown source `nowhere-at-all`/, help: /shared\/sources\.yaml/ },
  { fault: 'an unknown parent', changed: mended(nigra, 'parent: fictaria', 'parent: fictoria'), code: 'unknown-parent', file: nigra, at: 'parent', says: /unknown parent `fictoria`/, help: /did you mean `fictaria`/ },
  { fault: 'a duplicate synonym', changed: mended(nigra, 'parent: fictaria', 'parent: fictaria\nsynonyms: [Fictaria nivea]'), code: 'duplicate', file: nigra, at: 'Fictaria nivea', says: /`Fictaria nivea` is a synonym of `fictaria-alba` too/, help: /one species/ },
  { fault: 'an id that two files have', changed: { 'species/taxa/fictaria.yaml': tinyFiles[nigra]!.replace('× nigra', 'tertia').replace('[black fiction tree, moon tree]', '[third tree]') }, code: 'duplicate', file: 'species/taxa/fictaria.yaml', at: 'name', says: /`fictaria` stands in species\/genera\/fictaria\.yaml too/, help: /one file/ },
  { fault: 'a member that has a file of its own', changed: mended(alba, 'fictaria-parva:', 'fictaria-x-nigra:'), code: 'duplicate', file: alba, at: 'fictaria-x-nigra', says: /has a file of its own/, help: /members/ },
  { fault: 'a taxon that differs in nothing', changed: { [nigra]: 'name: Fictaria × nigra\nparent: fictaria\n', ...mended(bare, 'species: fictaria-x-nigra, cut.foliageLeft: false }, fires: certainly', 'species.budding.bareWood: none, cut.foliageLeft: false }, fires: certainly'), }, code: 'incomplete', file: nigra, at: 'name', says: /nothing differs/, help: /asParent/ },
  { fault: 'a group that lacks a trait', changed: mended('species/groups/invented-broadleaf.yaml', '  roots.phases: { is: [bud-swell], source: common-practice }\n', ''), code: 'incomplete', file: 'species/groups/invented-broadleaf.yaml', at: 'traits', says: /lacks the trait `roots\.phases`/, help: /every trait/ },
  { fault: 'an unknown fact in a rule', changed: mended(weak, '  - tree.vigour: weak', '  - tree.vigor: weak'), code: 'unknown-fact', file: weak, at: 'tree.vigor: weak', says: /unknown fact `tree\.vigor`/, help: /did you mean `tree\.vigour`/ },
  { fault: 'an unknown fact in a reason to lift a rule', changed: mended(weak, 'when: [season.phase: bud-swell]', 'when: [season.fase: bud-swell]'), code: 'unknown-fact', file: weak, at: 'season.fase', says: /unknown fact `season\.fase`/, help: /did you mean `season\.phase`/ },
  { fault: 'an unknown fact in the text of a rule', changed: mended(tooMany, '{roots.shareRemoved} of them', '{roots.shareRemovd} of them'), code: 'unknown-fact', file: tooMany, at: 'because', says: /unknown fact `roots\.shareRemovd` in the text/, help: /did you mean `roots\.shareRemoved`/ },
  { fault: 'a comparison of a word with a number', changed: mended(weak, '  - tree.vigour: weak', '  - tree.vigour: { above: 3 }'), code: 'not-allowed', file: weak, at: 'above: 3', says: /^(?!.*unknown fact).*`above`/, help: /accepted|fits/ },
  { fault: 'a comparison of a number with a word', changed: mended(tooMany, '{ above: { trait: roots.maxRemoved } }', '{ above: much }'), code: 'wrong-type', file: tooMany, at: 'above: much', says: /`much` is a string/, help: /number/ },
  { fault: 'a limit of a trait of another type', changed: mended(tooMany, '{ above: { trait: roots.maxRemoved } }', '{ above: { trait: budding.bareWood } }'), code: 'not-allowed', file: tooMany, at: 'trait: budding.bareWood', says: /`budding\.bareWood` is not accepted/, help: /./ },
  { fault: 'a title of more than eight words', changed: mended(weak, 'title: A weak tree is spared', 'title: A weak tree is to be spared hard work'), code: 'too-large', file: weak, at: 'title', says: /more than eight words/, help: /eight/ },
  { fault: 'a rule that covers none there is', changed: mended(weak, 'costs: tree', 'costs: tree\ncovers: [roots/too-mny]'), code: 'unknown-name', file: weak, at: 'covers', says: /unknown rule `roots\/too-mny`/, help: /did you mean `roots\/too-many`/ },
  { fault: 'an example of an unknown species', changed: mended(bare, 'species: fictaria-alba', 'species: fictaria-alva'), code: 'unknown-species', file: bare, at: 'species: fictaria-alva', says: /unknown species `fictaria-alva`/, help: /did you mean `fictaria-alba`/ },
  { fault: 'an example that does not do what it says', changed: mended(bare, '{ given: { species: fictaria-alba, cut.foliageLeft: false }, fires: never }', '{ given: { species: fictaria-alba, cut.foliageLeft: false }, fires: never }\n  - { given: { species: fictaria-alba, cut.foliageLeft: true }, fires: certainly }'), code: 'example-fails', file: bare, at: '{ given: { species: fictaria-alba, cut.foliageLeft: true }', says: /example 4 says `certainly`, the rule fires `never`/, help: /mend/ },
  { fault: 'a threshold without an example at it', changed: mended(tooMany, '  - { given: { species.roots.maxRemoved: 0.4, roots.shareRemoved: 0.4 }, fires: never }\n', ''), code: 'boundary-example', file: tooMany, at: 'examples', says: /no example of `roots\.shareRemoved` at its trait roots\.maxRemoved/, help: /just inside, at and just outside/ },
  { fault: 'a rule without an example that fires only possibly', changed: mended(tooMany, '  - { given: { species.roots.maxRemoved: 0.4 }, fires: possibly }\n', ''), code: 'boundary-example', file: tooMany, at: 'examples', says: /no example fires `possibly`/, help: /add one/ },
  { fault: 'an operation that fewer than two rules name', changed: { ...mended(weak, 'operations: [repot, cut-back]', 'operations: [cut-back]') }, code: 'incomplete', file: 'shared/operations.yaml', at: 'repot', says: /fewer than two rules name `repot`/, help: /rules\// },
  { fault: 'a species that vanished without a rename', changed: { 'shared/published.yaml': 'species: [fictaria-alba, fictaria-rubra]\nrules: [roots/too-many]\n' }, code: 'vanished', file: 'shared/renames.yaml', at: '[]', says: /`fictaria-rubra` was published among species and is gone/, help: /shared\/renames\.yaml/ },
  { fault: 'a rule that vanished without a rename', changed: { 'shared/published.yaml': 'rules: [roots/too-many, roots/too-few]\n' }, code: 'vanished', file: 'shared/renames.yaml', at: '[]', says: /`roots\/too-few` was published among rules and is gone/, help: /from, to, since/ },
  ...[['phases', 'leaf-fall'], ['sources', 'a-lost-handbook'], ['messages', 'caution.lost']].map(([kind, id]): Broken => (
    { fault: `an id that vanished from ${kind!} without a rename`, changed: { 'shared/published.yaml': `${kind!}: [${id!}]\n` }, code: 'vanished', file: 'shared/renames.yaml', at: '[]', says: new RegExp(`\`${id!}\` was published among ${kind!} and is gone`), help: /without `to`/ })),
  { fault: 'the same key twice', changed: mended(nigra, 'name: Fictaria × nigra', 'name: Fictaria × nigra\nname: Fictaria nigra'), code: 'duplicate', file: nigra, at: 'name: Fictaria nigra', says: /the same key stands twice/, help: /keep one/ },
  { fault: 'YAML that is none', changed: mended(nigra, 'traits:', 'traits: ]'), code: 'bad-yaml', file: nigra, at: ']', says: /./, help: /indentation|quotes/ },
  { fault: 'an alias that sets what its operation does not take', changed: mended('shared/operations.yaml', 'aliases: { prune back: {} }', 'aliases: { prune back: { sealedd: true } }'), code: 'unknown-parameter', file: 'shared/operations.yaml', at: 'sealedd: true', says: /`sealedd` of the alias `prune back` is no parameter of `cut-back`/, help: /./ },
  { fault: 'an alias that two operations share', changed: mended('shared/operations.yaml', 'aliases: { prune back: {} }', 'aliases: { prune back: {}, root pruning: {} }'), code: 'duplicate', file: 'shared/operations.yaml', at: 'root pruning: {} }\n  strain: { least: light }\n', says: /`root pruning` is an alias of `repot` too/, help: /one operation/ },
  { fault: 'a fact that is both assumed and asked for', changed: mended('shared/facts.yaml', 'given: tree.vigour, assume: steady', 'given: tree.vigour, ask: phase, assume: steady'), code: 'not-allowed', file: 'shared/facts.yaml', at: 'tree.vigour', says: /both assumed and asked for/, help: /keep one/ },
  { fault: 'a fact that is neither assumed, asked for nor worked out', changed: mended('shared/facts.yaml', 'given: operation.foliageLeft, ask: foliage-left', 'given: operation.foliageLeft'), code: 'incomplete', file: 'shared/facts.yaml', at: 'cut.foliageLeft', says: /neither assumed, asked for nor worked out/, help: /assume/ },
  { fault: 'a group of operations without a name', changed: mended('shared/operations.yaml', 'group: roots', 'group: rots'), code: 'missing', file: 'shared/operations.yaml', at: 'repot', says: /no wording `group\.rots`/, help: /wording/ },
  { fault: 'a caution without words', changed: mended('shared/wording/en.yaml', 'caution.blades: Blades cut fingers.\n', ''), code: 'missing', file: 'shared/cautions.yaml', at: 'blades', says: /no wording `caution\.blades`/, help: /wording/ },
];

const textAt = (changed: Changed, file: string, line: number, col: number): string =>
  (({ ...tinyFiles, ...changed })[file] ?? '').split('\n').slice(line - 1).join('\n').slice(col - 1);

describe('one fault is reported once, at its line and column, with what may help', () => {
  test.each(broken.map((each): [string, Broken] => [each.fault, each]))('%s', async (_, { changed, code, file, at, says, help }) => {
    const { issues } = await vet(tinyFolder(changed));
    expect(issues.map((issue) => `${issue.code} in ${issue.file}: ${issue.message}`)).toHaveLength(1);
    const [issue] = issues;
    expect({ code: issue!.code, file: issue!.file }).toEqual({ code, file });
    expect(issue!.message).toMatch(says);
    expect(issue!.message).not.toMatch(/\n/);
    expect(issue!.help).toMatch(help);
    expect(textAt(changed, file, issue!.line!, issue!.col!).slice(0, at.length)).toBe(at);
  });
});

test('a circle of parents is reported in each file of the circle, and nothing hangs', async () => {
  const { issues } = await vet(tinyFolder({
    ...mended('species/genera/fictaria.yaml', 'parent: invented-broadleaf', 'parent: fictaria-alba'),
  }));
  const circles = issues.filter((issue) => issue.code === 'circle');
  expect(circles.map((issue) => issue.file)).toContain('species/genera/fictaria.yaml');
  for (const issue of circles) {
    expect(issue.message).toMatch(/fictaria <- fictaria-alba|fictaria-alba <- fictaria/);
    expect(issue.help).toMatch(/group/);
  }
  expect(issues.every((issue) => issue.code === 'circle')).toBe(true);
});

test('a rule whose conditions exclude each other can never fire, and vet says so', async () => {
  const impossible = tinyFiles[weak]!.replace('  - tree.vigour: weak\n', '  - tree.vigour: weak\n  - tree.vigour: strong\n').replace(/examples:[^]*$/, 'examples:\n  - { given: { tree.vigour: weak }, fires: never }\n');
  const { issues } = await vet(tinyFolder({ [weak]: impossible }));
  const [said, ...others] = issues.filter((issue) => issue.code === 'impossible-rule');
  expect(others).toEqual([]);
  expect(said).toMatchObject({ file: weak, line: 5, col: 1 });
  expect(said!.message).toMatch(/can never fire/);
  expect(said!.help).toMatch(/exclude each other/);
});

test('a rule that no species meets can never fire, and vet says so', async () => {
  const impossible = tinyFiles[bare]!.replace('species.budding.bareWood: [poor, none]', 'species.form.leafHabit: evergreen').replace(/examples:[^]*$/, 'examples:\n  - { given: { species: fictaria-alba, cut.foliageLeft: false }, fires: never }\n');
  const { issues } = await vet(tinyFolder({ [bare]: impossible }));
  expect(issues.filter((issue) => issue.code === 'impossible-rule')).toHaveLength(1);
});

test.each([
  ['a rename', '- { from: fictaria-rubra, to: fictaria-alba, since: 0.2.0 }\n'],
  ['two renames one after the other', '- { from: fictaria-rubra, to: fictaria-rosea, since: 0.2.0 }\n- { from: fictaria-rosea, to: fictaria-alba, since: 0.3.0 }\n'],
  ['an end with nothing in its place', '- { from: fictaria-rubra, since: 1.0.0 }\n'],
])('%s that is told makes a vanished id good', async (_, renames) => {
  const { issues } = await vet(tinyFolder({ 'shared/published.yaml': 'species: [fictaria-rubra]\n', 'shared/renames.yaml': renames }));
  expect(issues).toEqual([]);
});

test('aliases that multiply without end are reported once, at once, and hang nothing', async () => {
  const bomb = ['a: &a [x, x, x, x, x, x, x, x, x, x]', ...'bcdefghi'.split('').map((letter, i) => `${letter}: &${letter} [${Array(10).fill(`*${'abcdefgh'[i]!}`).join(', ')}]`)].join('\n');
  const started = performance.now();
  const { issues } = await vet(tinyFolder({ [nigra]: `${bomb}\n` }));
  expect(performance.now() - started).toBeLessThan(5_000);
  expect(issues).toHaveLength(1);
  expect(issues[0]).toMatchObject({ code: 'bad-yaml', file: nigra });
  expect(issues[0]!.message).toMatch(/aliases multiply/);
});

test('every fault of a folder is reported at once, sorted out by file', async () => {
  const { issues } = await vet(tinyFolder({ ...mended(nigra, 'is: none', 'is: nonne'), ...mended(weak, '  - tree.vigour: weak', '  - tree.vigor: weak'), ...mended(tooMany, 'costs: tree', 'costs: money') }));
  expect(issues.map((issue) => issue.file).sort()).toEqual([tooMany, weak, nigra].sort());
});

test('a folder that is none is refused in words', async () => {
  await expect(vet('/nowhere/at/all')).rejects.toMatchObject({ name: 'SparebudError', code: 'missing' });
});
