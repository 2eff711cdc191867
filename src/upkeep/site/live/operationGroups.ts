/** The operations as the trade groups them, for a list to choose from; any that stands nowhere here comes last, under other work. */
export const operationGroups: Readonly<Record<string, readonly string[]>> = {
  'Branches and trunk': ['remove-branch', 'clean-stub', 'cut-back', 'trunk-chop', 'seal-wound', 'remove-suckers'],
  'Shoots, leaves and flowers': ['thin-shoots', 'trim', 'pinch', 'candle-cut', 'candle-pinch', 'needle-pluck', 'defoliate', 'remove-flowers'],
  'Wire and deadwood': ['wire', 'unwire', 'strip-bark'],
  'Roots and pots': ['repot', 'slip-pot', 'trim-escaped-roots', 'divide', 'collect', 'plant-out'],
  'New plants': ['take-cuttings', 'air-layer', 'graft', 'sow'],
  'Keeping it': ['feed', 'overwinter', 'move-outdoors', 'move-indoors'],
};
