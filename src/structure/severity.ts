/** Cut surfaces added up over the section of the trunk; a pruning above a third counts as severe: BS 3998, draft of 2008, annex E (quoted). */
export const severity = (cutsMm: readonly number[], baseMm: number): number => cutsMm.reduce((sum, diameter) => sum + diameter ** 2, 0) / baseMm ** 2;
