import { schemas } from './schemas.generated.js';
import { type Validator, validatorOf } from './validatorOf.js';

/** Made when it is first asked: an import alone costs nothing. */
const lazily = (name: string): Validator => {
  let made: Validator | undefined;
  return (value) => {
    made ??= validatorOf(name, schemas);
    return made(value);
  };
};

export const proposalErrors = /* @__PURE__ */ lazily('proposal.schema.json');
export const planErrors = /* @__PURE__ */ lazily('plan.schema.json');
export const collectionErrors = /* @__PURE__ */ lazily('collection.schema.json');
export const keepersErrors = /* @__PURE__ */ lazily('keepers.schema.json');
