import { speciesLabel } from '../../advice/findings.js';
import type { Year } from '../../advice/year.js';
import type { Knowledge, Species } from '../../knowledge/knowledge.js';
import { factLink } from './factLink.js';
import { html, type Html } from './html.js';
import { listed } from './listed.js';
import { link, type Page } from './page.js';
import { shownTrait } from './shownTrait.js';
import { sourceList } from './sourceList.js';
import { speciesName } from './speciesName.js';
import { yearWords } from './yearWords.js';

/** The year of a species at a sample place, and the picture of it. */
export interface SampleYear {
  readonly year: Year;
  readonly picture: string;
}

const languages: Readonly<Record<string, string>> = { en: 'English', 'ja-Latn': 'Japanese', de: 'German', fr: 'French', es: 'Spanish', 'zh-Latn': 'Chinese' };

const chain = (species: Species, knowledge: Knowledge): readonly Species[] => {
  const parent = species.parent === undefined ? undefined : knowledge.species[species.parent];
  return parent === undefined ? [] : [...chain(parent, knowledge), parent];
};

const traitRows = (species: Species, knowledge: Knowledge): Html => {
  const families = new Map<string, [string, Species['traits'][string]][]>();
  for (const [name, trait] of Object.entries(species.traits)) {
    const family = name.split('.')[0]!;
    families.set(family, [...(families.get(family) ?? []), [name, trait]]);
  }
  return html`${[...families].map(([family, traits]) => html`<h3>${family}</h3><div class="wide"><table><thead><tr><th scope="col">trait</th><th scope="col">value</th><th scope="col">said by</th><th scope="col">sources</th></tr></thead><tbody>${traits.map(([name, trait]) => html`<tr><th scope="row">${factLink(`species.${name}`, knowledge)} <small>${name.slice(family.length + 1)}</small></th><td>${shownTrait(name, trait, knowledge)}</td><td>${trait.level === species.id ? 'itself' : link(`species/${trait.level}.html`, trait.level)}</td><td>${sourceList(trait.sources, knowledge)}${trait.note === undefined ? '' : html`<br><small>${trait.note}</small>`}</td></tr>`)}</tbody></table></div>`)}`;
};

/** A page of one species, genus or group. */
export const speciesPage = (species: Species, knowledge: Knowledge, cautions: readonly string[], sample: SampleYear | undefined): Page => {
  const names = Object.entries(species.commonNames);
  const below = Object.values(knowledge.species).filter(({ parent }) => parent === species.id);
  const label = speciesLabel(species, knowledge);
  return {
    path: `species/${species.id}.html`, title: label === species.name ? species.name : `${label}, ${species.name}`, section: 'species',
    description: `${species.name}: traits with their sources, and what is allowed when.`,
    words: [species.id, species.name, ...names.flatMap(([, each]) => each), ...species.synonyms].join(' '),
    body: html`
<p class="chain">${chain(species, knowledge).flatMap((each) => [link(`species/${each.id}.html`, speciesName(each)), ' › '])}${species.rank}</p>
<h1>${speciesName(species)}${species.author === undefined ? '' : html` <small>${species.author}</small>`}</h1>
${names.length === 0 ? '' : html`<ul class="names">${names.map(([language, each]) => html`<li><span>${languages[language] ?? language}</span> <b lang="${language}">${each.join(', ')}</b></li>`)}</ul>`}
${species.synonyms.length === 0 ? '' : html`<p>Also called ${listed(species.synonyms.map((each) => html`<i>${each}</i>`))}.</p>`}
${species.rank === 'member' ? html`<p>It has no entry of its own: ${link(`species/${species.parent!}.html`, speciesName(knowledge.species[species.parent!]!))} answers for it, and each answer says so.</p>` : ''}
${below.length === 0 ? '' : html`<h2>Kinds of it</h2><ul class="columns">${below.map((each) => html`<li>${link(`species/${each.id}.html`, speciesName(each))}</li>`)}</ul>`}
${sample === undefined ? '' : html`<h2>A year of it</h2><p>As a sample: a strong tree, outdoors, at ${sample.year.where.text}. Ask with your own place: dates differ by weeks.</p><div class="wide" role="region" aria-label="Picture of the year" tabindex="0"><img src="~/${sample.picture}" width="800" alt="${`Phases, frost, and for each operation the days on which it is allowed, risky or advised against, from ${sample.year.from} to ${sample.year.to}; in words below.`}"></div>
<details><summary>The same in words, with the rule that speaks loudest</summary><div class="wide">${yearWords(sample.year, knowledge)}</div></details>`}
${cautions.length === 0 ? '' : html`<h2>Cautions</h2><ul>${cautions.map((each) => html`<li>${each}</li>`)}</ul><p>Those of the work itself stand with each ${link('operations/index.html', 'operation')}.</p>`}
<h2>Traits</h2>
${traitRows(species, knowledge)}
<p><code>sparebud species ${species.id}</code> prints the same. Wrong? <a href="~/guides/catalogue.html">Mend it.</a></p>`,
  };
};
