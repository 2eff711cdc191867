import { Engine } from 'json-rules-engine';

/** How often json-rules-engine runs while some work is done. */
export const engineRuns = async (work: () => Promise<unknown>): Promise<number> => {
  const { run } = Engine.prototype;
  let runs = 0;
  Engine.prototype.run = async function counted(...given) {
    runs++;
    return await run.apply(this, given);
  };
  try {
    await work();
  } finally {
    Engine.prototype.run = run;
  }
  return runs;
};
