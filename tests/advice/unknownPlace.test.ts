import { expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { SparebudError } from '../../src/knowledge/error.js';
import { advisor, shipped } from '../shipped.js';

const asked = (place: string) => ({ tree: { species: 'acer-buergerianum' }, operation: { op: 'repot' }, where: { place } });
const refused = async (of: typeof advisor, place: string) => await of.assess(asked(place)).then(() => undefined, (cause: unknown) => (cause instanceof SparebudError ? cause.issues[0] : Promise.reject(cause as Error)));

test.each([['Köln', 'koeln-cologne-germany'], ['zuerich', 'zurich-switzerland'], ['tokio', 'tokyo-japan'], ['malmo', 'malmo-sweden']])('a place that is called %s is told with the id of its station', async (place, id) => {
  const issue = await refused(advisor, place);
  expect(issue).toMatchObject({ code: 'unknown-place', path: 'where.place', found: place });
  expect(issue!.accepted?.[0]).toBe(id);
  expect(issue!.help).toContain(`did you mean \`${id}\``);
});

test('a place that no station is near to in name is looked up, or told by latitude and longitude', async () => {
  expect(await refused(advisor, 'qqxz')).toMatchObject({ accepted: [], help: 'look it up with `sparebud places`, or tell latitude and longitude' });
});

test('an advisor that was given no stations says so', async () => {
  expect((await refused(createAdvisor(shipped), 'tokyo-japan'))!.help).toMatch(/was given no stations/);
});
