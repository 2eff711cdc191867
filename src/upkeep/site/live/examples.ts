import type { Question } from './withoutEmpty.js';

/** Questions to begin with, invented, for those who meet the page empty. */
export const examples: readonly { readonly label: string; readonly asked: Question }[] = [
  { label: 'Repot a trident maple in November', asked: { tree: { species: 'trident maple' }, operation: { op: 'repot' }, date: '2026-11-15', where: { place: 'koeln-cologne-germany' } } },
  { label: 'Cut a Scots pine back into old wood', asked: { tree: { species: 'Scots pine' }, operation: { op: 'cut-back', woodAge: 'old' }, date: '2027-04-10', where: { place: 'malmo-sweden' } } },
  { label: 'Bend an olive hard in summer', asked: { tree: { species: 'olive' }, operation: { op: 'wire', bend: 'severe' }, date: '2027-07-01', where: { place: 'san-francisco-intl-airport-ca' } } },
];
