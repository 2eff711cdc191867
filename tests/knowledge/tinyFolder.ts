import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A whole small body of knowledge, as the files that it is read from: two operations, three rules, one chain of species. Its trees are invented. */
export const tinyFiles: Readonly<Record<string, string>> = {
  'shared/facts.yaml': `season.phase: { type: choice, values: [dormant, bud-swell, extending, hardened-off], meaning: where it stands in its year, given: tree.phase, ask: phase }
season.rootDaysLeft: { type: number, unit: days, bounds: [0, 366], meaning: days in which roots can grow, from: [season.phase] }
tree.vigour: { type: choice, values: [strong, steady, weak], worse: high, meaning: how it grew, given: tree.vigour, assume: steady }
roots.shareRemoved: { type: number, unit: share, bounds: [0, 1], worse: high, meaning: share of roots taken, given: operation.rootsRemoved, assume: { default: 0, repot: 0.3 }, tries: [0.1, 0.5] }
cut.foliageLeft: { type: boolean, meaning: any green left, given: operation.foliageLeft, ask: foliage-left }
species.form.leafHabit: { type: choice, values: [deciduous, semi-evergreen, evergreen], meaning: whether it sheds its leaves }
species.budding.bareWood: { type: choice, values: [good, fair, poor, none], worse: high, meaning: how bare wood buds }
species.roots.maxRemoved: { type: number, unit: share, bounds: [0, 1], meaning: roots it bears to lose }
species.roots.phases: { type: list, of: season.phase, meaning: when roots are worked }
species.growth.minNightC: { type: number, unit: °C, bounds: [-10, 25], optional: true, meaning: coldest night it grows in }
`,
  'shared/operations.yaml': `repot:
  label: repot
  group: roots
  parameters: [rootsRemoved]
  usual: [{ rootsRemoved: 0.3 }]
  aliases: { root pruning: {}, half root cut: { rootsRemoved: 0.5 } }
  strain: { least: light, hardFrom: { roots.shareRemoved: 0.25 } }
  daysNeeded: { days: 45, sources: [common-practice] }
cut-back:
  label: cut back
  group: branches
  parameters: [foliageLeft]
  usual: [{ foliageLeft: true }]
  aliases: { prune back: {} }
  strain: { least: light }
`,
  'shared/phases.yaml': `dormant: { models: [deciduous], bbch: [0, 0], label: dormant, meaning: at rest, being: at rest, seen: no movement }
bud-swell: { models: [deciduous], bbch: [1, 3], label: buds swelling, meaning: buds fatten, being: buds fatten, seen: fatter buds }
extending: { models: [deciduous], bbch: [31, 39], label: extending, meaning: shoots lengthen, being: shoots lengthen, seen: soft tips }
hardened-off: { models: [deciduous], bbch: [91, 91], label: hardened off, meaning: growth paused, being: growth paused, seen: firm leaves }
`,
  'shared/sources.yaml': `common-practice: { title: Common practice of the trade, from: practice, grade: practice, studied: practice }
a-handbook: { title: An invented handbook, author: An invented author, year: 2001, from: read, grade: extension, studied: nursery }
another-handbook: { title: Another invented handbook, from: read, grade: extension, studied: container }
`,
  'shared/alerts.yaml': '[]\n',
  'shared/cautions.yaml': 'blades: { operations: [cut-back, repot], sources: [common-practice] }\n',
  'shared/following.yaml': 'shelter-after-roots: { operations: [repot], days: [0, 28], sources: [common-practice] }\n',
  'shared/growing.yaml': `growing: { ground: 1, bonsai-pot: 0.5 }
vigour: { strong: 1.3, steady: 1, weak: 0.5 }
ringMm: { slow: 1 }
callusPerRing: 1.5
woundPerBranch: { collar: 1 }
tipsToFoliage: { trim: 1 }
bendStrain: { firm: 0.01, severe: 0.03 }
wireMark: { depthMm: 0.5, peak: 1.7 }
berthC: { cool-room: [3, 12] }
shelterC: { cold-frame: 5 }
recoveryWeeks: { light: [2, 6] }
strain: { light: 1, hard: 4, halvesInGrowingDays: 90 }
stubDryDays: 180
twigMm: 4
sources: [common-practice]
`,
  'shared/renames.yaml': '[]\n',
  'shared/wording/en.yaml': `ask.phase: What do you see on the tree?
ask.foliage-left: Is any green left below the cut?
group.branches: branches
group.roots: roots
caution.blades: Blades cut fingers.
after.shelter-after-roots: Shelter it.
`,
  'species/groups/invented-broadleaf.yaml': `name: Invented broadleaf trees
traits:
  form.leafHabit: { is: deciduous, source: common-practice }
  budding.bareWood: { is: fair, source: common-practice }
  roots.maxRemoved: { is: 0.4, source: a-handbook }
  roots.phases: { is: [bud-swell], source: common-practice }
`,
  'species/genera/fictaria.yaml': `name: Fictaria
parent: invented-broadleaf
commonNames: { en: [fiction tree] }
traits:
  budding.bareWood: { is: good, source: a-handbook }
`,
  'species/taxa/fictaria-alba.yaml': `name: Fictaria alba
parent: fictaria
commonNames: { en: [white fiction tree, moon tree], fr: [arbre rêvé] }
synonyms: [Fictaria nivea]
traits:
  roots.maxRemoved: { either: [0.2, 0.4], sources: [a-handbook, another-handbook] }
members:
  fictaria-parva: { name: Fictaria parva, synonyms: [Fictaria minima] }
`,
  'species/taxa/fictaria-x-nigra.yaml': `name: Fictaria × nigra
parent: fictaria
commonNames: { en: [black fiction tree, moon tree] }
traits:
  budding.bareWood: { is: none, source: common-practice }
  growth.minNightC: { is: 10, source: common-practice }
`,
  'rules/roots/too-many.yaml': `title: More roots than it bears to lose
operations: [repot]
verdict: advise-against
costs: tree
when:
  - roots.shareRemoved: { above: { trait: roots.maxRemoved } }
because: Its roots feed {species.name}, and {roots.shareRemoved} of them is more than it bears.
sources: [a-handbook]
examples:
  - { given: { species.roots.maxRemoved: 0.4, roots.shareRemoved: 0.5 }, fires: certainly }
  - { given: { species.roots.maxRemoved: 0.4, roots.shareRemoved: 0.4 }, fires: never }
  - { given: { species.roots.maxRemoved: 0.4, roots.shareRemoved: 0.3 }, fires: never }
  - { given: { species.roots.maxRemoved: 0.4 }, fires: possibly }
`,
  'rules/strain/weak.yaml': `title: A weak tree is spared
operations: [repot, cut-back]
verdict: risky
costs: tree
when:
  - tree.vigour: weak
unless:
  - when: [season.phase: bud-swell]
    because: The whole season lies ahead.
    sources: [common-practice]
because: A weak tree has little to spare.
sources: [common-practice]
examples:
  - { given: { tree.vigour: weak, season.phase: dormant }, fires: certainly }
  - { given: { tree.vigour: weak, season.phase: bud-swell }, fires: never }
  - { given: {}, fires: possibly }
`,
  'rules/cut/bare-wood.yaml': `title: Bare wood may not bud
operations: [cut-back]
verdict: advise-against
costs: branch
when:
  - cut.foliageLeft: false
  - species.budding.bareWood: [poor, none]
because: Bare wood of {species.name} seldom buds.
sources: [common-practice, a-handbook]
examples:
  - { given: { species: fictaria-x-nigra, cut.foliageLeft: false }, fires: certainly }
  - { given: { species: fictaria-x-nigra }, fires: possibly }
  - { given: { species: fictaria-alba, cut.foliageLeft: false }, fires: never }
`,
};

/** Files by their path; one that is null is left out. */
export type Changed = Readonly<Record<string, string | null>>;

const made: string[] = [];

/** Writes the small body of knowledge to a new temporary folder, some files changed; `removeTinyFolders` takes it away. */
export const tinyFolder = (changed: Changed = {}): string => {
  const folder = mkdtempSync(join(tmpdir(), 'tiny-knowledge-'));
  made.push(folder);
  for (const [path, text] of Object.entries({ ...tinyFiles, ...changed })) {
    if (text === null) continue;
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
};

/** Takes away every folder that was written here. */
export const removeTinyFolders = (): void => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
};

/** A file of the small body of knowledge with one piece of its text put in the place of another. */
export const mended = (path: string, from: string, to: string): Changed => {
  const text = tinyFiles[path]!;
  if (text.split(from).length !== 2) throw new Error(`\`${from}\` stands ${text.split(from).length - 1} times in ${path}`);
  return { [path]: text.replace(from, to) };
};
