import type { OperationForm } from '../../knowledge/operationForms.js';
import { capital } from './capital.js';

/** Operations by the kind of work that they are, each kind with its name, in the order in which the first of each is listed. */
export const workGroups = (forms: readonly OperationForm[]): readonly (readonly [name: string, forms: readonly OperationForm[]])[] => {
  const groups = new Map<string, OperationForm[]>();
  for (const form of forms) groups.set(capital(form.group.label), [...(groups.get(capital(form.group.label)) ?? []), form]);
  return [...groups];
};
