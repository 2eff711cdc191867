import { records, withinAStep } from './records.js';
import type { Table } from './table.js';

export const budRecords: Table = {
  name: 'regrowth - single records', traits: 'budding.stump, budding.base, budding.bareWood', published: 'BROT 2.0; FVS sprouting model; fire records of AusTraits; others by row',
  few: 'most records are named by the trait that they were read for',
  checks: () => records(['budding.stump', 'budding.base', 'budding.bareWood'], withinAStep),
};
