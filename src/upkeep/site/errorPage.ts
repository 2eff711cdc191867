import type { IssueCode } from '../../knowledge/error.js';
import { capital } from './capital.js';
import { html } from './html.js';
import { link, type Page } from './page.js';

/** What each code means, and what to do. */
export const errorTexts: Readonly<Record<IssueCode, readonly [means: string, help: string]>> = {
  'unknown-name': ['a name that nothing is called', 'Look at the near miss that the issue names.'],
  'unknown-species': ['a species that the catalogue does not know', 'Give the accepted name, a synonym, or the genus or group it belongs to: those are good answers too.'],
  'ambiguous-species': ['a common name that several species share', 'Choose one of `accepted`.'],
  'unknown-operation': ['an operation that there is not', '`accepted` lists the ids, as `advisor.operations()` does; trade names are understood too.'],
  'unknown-parameter': ['a parameter that this operation does not have', 'The operation’s page lists those it has.'],
  'unknown-field': ['a member that the schema does not know', 'Look at the near miss; an app’s own data belongs under `meta`.'],
  'unknown-trait': ['a trait that there is not', 'shared/facts.yaml lists all, as entries that begin with `species.`.'],
  'unknown-fact': ['a fact in a rule that there is not', 'shared/facts.yaml lists all.'],
  'unknown-source': ['a source id that shared/sources.yaml does not have', '`sparebud new source` adds one.'],
  'unknown-parent': ['a parent that there is not', 'Name a species, genus or group file by its id.'],
  'unknown-place': ['a station that there is not', '`sparebud places` looks one up; or tell latitude and longitude.'],
  missing: ['something that has to be told is not there', 'Add it at `path`.'],
  'wrong-type': ['a value of another type than is asked for', 'See `accepted`.'],
  'not-allowed': ['a value outside the list or the shape', 'See `accepted`.'],
  'out-of-bounds': ['a number outside its bounds', 'Look at the unit: shares run from 0 to 1, lengths are in mm.'],
  'bad-date': ['a date that is none', 'Write ISO 8601: 2027-03-15.'],
  'bad-pattern': ['a text that is not of the asked form', 'The message shows the form.'],
  'too-large': ['more than can be taken', 'The message says how much can.'],
  circle: ['parents or branches that lead back to themselves', 'Break the circle.'],
  duplicate: ['an id, name or key that stands twice', 'Take one away.'],
  incomplete: ['something still to be written', 'Write what stands after `TODO`.'],
  'impossible-rule': ['a rule that can never fire', 'Look at its limits against the bounds of the fact.'],
  'example-fails': ['an example that does not do what it says', 'Mend the rule, or the example.'],
  'boundary-example': ['a threshold without an example inside, at and outside it', '`sparebud vet --mend` drafts them.'],
  vanished: ['an id that was published and is gone', 'Add it to shared/renames.yaml, or bring it back.'],
  'bad-yaml': ['a file that is no YAML', 'Look at indentation, colons, commas and quotes on that line.'],
  'bad-json': ['a line that is no JSON', 'Write one JSON proposal a line.'],
  impossible: ['what cannot be: a branch above its trunk, work on a branch that is gone', 'Measure again, or put the steps in order.'],
};

/** A page of one error code. */
export const errorPage = (code: IssueCode): Page => {
  const [means, help] = errorTexts[code];
  return {
    path: `errors/${code}.html`, title: code, section: 'errors', description: `${code}: ${means}`, words: means,
    body: html`<p class="chain">${link('errors/index.html', 'errors')} › ${code}</p><h1><code>${code}</code></h1><p>${capital(means)}.</p><p>${help}</p><p>Every issue has <code>code</code>, <code>path</code>, <code>message</code>, and where they help <code>found</code>, <code>accepted</code> (of a long list the nearest) and <code>help</code>. All that is wrong is said at once.</p>`,
  };
};
