import { isMembers, type Question } from './withoutEmpty.js';

/** What a question says at a path such as `tree.trunk.diameterMm`. */
export const atPath = (question: Question, path: string): unknown =>
  path.split('.').reduce<unknown>((of, name) => (isMembers(of) && Object.hasOwn(of, name) ? of[name] : undefined), question);

/** The patch that sets one path; `null` takes it away. */
export const patchAt = (path: string, value: unknown): Question => path.split('.').reduceRight<unknown>((of, name) => ({ [name]: of }), value) as Question;
