import { describe, expect, it } from 'vitest';
import type { ParameterForm } from '../../src/knowledge/operationForms.js';
import { germanAdvisor } from '../german.js';
import { advisor, shipped } from '../shipped.js';

const forms = advisor.operations();

const valuesOf = ({ type, choices, bounds, whole }: ParameterForm): readonly unknown[] => {
  switch (type) {
    case 'choice':
      return choices;
    case 'boolean':
      return [true, false];
    case 'number':
      return whole === true ? bounds.map(Math.round) : bounds;
    case 'text':
      return [];
  }
};

describe('the forms that an app builds from the list of operations', () => {
  it('hold every operation, with a label and every parameter that it has', () => {
    expect(forms.map(({ op }) => op).sort()).toEqual(Object.keys(shipped.operations).sort());
    for (const { op, label, parameters } of forms) {
      expect(label, op).not.toBe('');
      expect(parameters.map(({ name }) => name)).toEqual(shipped.operations[op]!.parameters);
      for (const { name, label: words, meaning } of parameters) expect([words, meaning].every((text) => /^[^A-Z]/.test(text)), `${op}.${name}: ${words}; ${meaning}`).toBe(true);
    }
  });

  it('stand in groups that have a name, in the language that is asked for', () => {
    for (const { op, group } of forms) expect(group, op).toEqual({ id: shipped.operations[op]!.group, label: shipped.wording[`group.${group.id}`] });
    expect(new Set(forms.map(({ group }) => group.id)).size).toBeLessThan(forms.length / 3);
    expect(germanAdvisor.operations().find(({ op }) => op === 'repot')!.group).toEqual({ id: 'roots', label: 'Wurzeln und Töpfe' });
  });

  it('offer only what a proposal may hold, and bounds beyond which it may not go', async () => {
    const ask = async (op: string, name: string, value: unknown) => await advisor.verdict({ tree: { species: 'acer-palmatum' }, operation: { op, [name]: value } });
    for (const { op, parameters } of forms) {
      for (const parameter of parameters) {
        for (const value of valuesOf(parameter)) await ask(op, parameter.name, value);
        if (parameter.bounds !== undefined) await expect(ask(op, parameter.name, parameter.bounds[1] + 1), `${op}.${parameter.name}`).rejects.toThrow();
      }
    }
  });

  it('hold what their type promises: choices to choose from, bounds for a number', () => {
    for (const parameter of forms.flatMap(({ parameters }) => parameters)) {
      if (parameter.type === 'choice') expect(parameter.choices.length, parameter.name).toBeGreaterThan(1);
      if (parameter.type === 'number') expect(parameter.bounds[0], parameter.name).toBeLessThan(parameter.bounds[1]);
    }
  });

  it('say what is taken where nothing is told, as the assessment does', async () => {
    const roots = forms.find(({ op }) => op === 'repot')!.parameters.find(({ name }) => name === 'rootsRemoved')!;
    const answer = await advisor.assess({ tree: { species: 'acer-palmatum' }, operation: { op: 'repot' }, date: '2027-08-10', where: { place: 'koeln-cologne-germany' } });
    expect(answer.assumed.find(({ fact }) => fact === 'roots.shareRemoved')?.value).toBe(roots.assumed);
  });
});
