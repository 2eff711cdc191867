import { constants } from 'node:os';

const signals = ['SIGINT', 'SIGTERM'] as const;

/** Which signal a process was told to stop by, and the exit code that says so. */
export interface Stopped {
  readonly by: string;
  readonly exitCode: number;
}

/** Listens for the signals that ask a process to stop, so that it can end with whole lines; told the same twice, it stops at once. */
export const stopOnSignals = (): { readonly signal: AbortSignal; readonly stopped: () => Stopped | undefined } => {
  const stop = new AbortController();
  for (const name of signals) process.once(name, () => { stop.abort({ by: name, exitCode: 128 + constants.signals[name] } satisfies Stopped); });
  return { signal: stop.signal, stopped: () => (stop.signal.aborted ? (stop.signal.reason as Stopped) : undefined) };
};
