import type { Writable } from 'node:stream';

const everyMs = 500;

const said = (asked: number, seconds: number): string => `${asked.toLocaleString('en')} answered, ${Math.round(asked / Math.max(seconds, 0.001)).toLocaleString('en')} a second`;

/** How far a batch is, on a terminal as it goes, and how fast it was at its end. */
export const rateOn = (to: Writable & { readonly isTTY?: boolean }): { readonly progress: (asked: number) => void; readonly end: (asked: number, failed: number, stoppedBy?: string) => void } => {
  const started = performance.now();
  let shown = started;
  return {
    progress: (asked) => {
      const now = performance.now();
      if (to.isTTY !== true || now - shown < everyMs) return;
      shown = now;
      to.write(`\r${said(asked, (now - started) / 1000)} `);
    },
    end: (asked, failed, stoppedBy) => {
      to.write(`${to.isTTY === true ? '\r' : ''}${said(asked, (performance.now() - started) / 1000)}${failed === 0 ? '' : `; ${failed.toLocaleString('en')} could not be`}${stoppedBy === undefined ? '' : `; stopped by ${stoppedBy}`}\n`);
    },
  };
};
