import type { FactWord, Trait, Value } from '../knowledge/knowledge.js';
import type { Asked, Before, DerivedFacts, Derive, Read, Told } from './asked.js';
import { cutFacts } from './cut.js';
import { exposureFacts } from './exposure.js';
import { assumed, type FactValue, known, unknown } from './factValue.js';
import { growthFacts } from './growth.js';
import { seasonFacts } from './season.js';
import { structureFacts } from './structure.js';
import { lawFacts } from './law.js';
import { sittingFacts } from './sitting.js';
import { strainOwedFacts } from './strainOwed.js';
import { workFacts } from './work.js';

const families: Readonly<Record<string, Derive>> = { ...seasonFacts, ...cutFacts, ...structureFacts, ...workFacts, ...growthFacts, ...sittingFacts, ...strainOwedFacts, ...exposureFacts, ...lawFacts };

const traitValue = (trait: Trait | undefined): FactValue => {
  if (trait === undefined) return unknown();
  return trait.either === undefined ? known(trait.is as Value, trait.level) : { state: 'unknown', among: trait.either, from: trait.level };
};

const fits = (value: unknown, word: FactWord): boolean => {
  switch (word.type) {
    case 'number':
      return typeof value === 'number';
    case 'boolean':
      return typeof value === 'boolean';
    case 'choice':
    case 'text':
      return typeof value === 'string';
    case 'list':
    case 'range':
    case 'records':
      return false;
  }
};

const steps = new Map<string, readonly string[]>();

/** A path in a proposal, taken apart once. */
const stepsOf = (path: string): readonly string[] => {
  let kept = steps.get(path);
  if (kept === undefined) {
    kept = path.split('.');
    steps.set(path, kept);
  }
  return kept;
};

const givenValue = (asked: Asked, word: FactWord): Value | undefined => {
  if (word.given === undefined) return undefined;
  let at: unknown = asked.proposal;
  for (const step of stepsOf(word.given)) at = typeof at === 'object' && at !== null ? (at as Readonly<Record<string, unknown>>)[step] : undefined;
  return fits(at, word) ? (at as Value) : undefined;
};

/** Facts of one proposal: what is told, else what can be worked out, else what is assumed, else unknown. */
export const deriveFacts = (asked: Asked, before?: Before): DerivedFacts => {
  const { facts } = asked.knowledge;
  const kept = new Map<string, FactValue>();
  const inputs = new Map<string, Set<string>>();
  const open: string[] = [];

  const resolve = (id: string): FactValue => {
    if (id.startsWith('species.') && !asked.tried.has(id)) return traitValue(asked.traits[id.slice('species.'.length)]);
    const word = facts[id];
    if (word === undefined) return unknown();
    const given = asked.tried.get(id) ?? givenValue(asked, word);
    if (given !== undefined) return known(given, 'given');
    const worked = asked.built?.facts[id]?.(here, asked, told) ?? asked.past?.facts[id]?.(here, asked, ofLogged!) ?? families[id]?.(here, asked, told);
    if (worked !== undefined) return worked;
    const assume = word.assume?.[asked.operation.id] ?? word.assume?.['default'];
    return assume === undefined ? unknown(word.type === 'boolean' ? [true, false] : word.values) : assumed(assume);
  };
  const lookAt = (id: string): void => {
    const parent = open.at(-1);
    if (parent !== undefined) inputs.get(parent)!.add(id);
  };
  const told: Told = (id) => {
    lookAt(id);
    return asked.tried.get(id) ?? givenValue(asked, facts[id]!);
  };
  const read: Read = (id) => {
    lookAt(id);
    let value = kept.get(id);
    if (value === undefined) {
      if (open.includes(id)) return unknown();
      inputs.set(id, new Set());
      open.push(id);
      value = resolve(id);
      open.pop();
      kept.set(id, value);
    }
    return value;
  };
  /* What changed is worked out anew, and needs no record of what it was worked out of: that is known by now. */
  const readAgain: Read = (id) => {
    if (!before!.changed.has(id)) return before!.facts.read(id);
    let value = kept.get(id);
    if (value === undefined) {
      kept.set(id, unknown());
      value = resolve(id);
      kept.set(id, value);
    }
    return value;
  };
  const here = before === undefined ? read : readAgain;
  const ofLogged = asked.past?.ofLogged(asked, here, lookAt, before);
  return { read: here, inputsOf: before?.facts.inputsOf ?? ((id) => inputs.get(id) ?? new Set()), ofLogged };
};
