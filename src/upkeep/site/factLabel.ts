import type { FactWord } from '../../knowledge/knowledge.js';

/** A fact in a few words: its label, else its meaning up to what only explains it. */
export const factLabel = ({ label, meaning }: FactWord): string => label ?? meaning.split(/[:;]/)[0]!;
