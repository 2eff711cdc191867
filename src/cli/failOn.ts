import { Option } from 'commander';
import type { Assessment } from '../contract/types.generated.js';

/** `--fail-on`: the answer at which a script should stop. */
export const failOnOption = (): Option => new Option('--fail-on <verdict>', 'exit 1 where met').choices(['risky', 'advise-against', 'unsettled']);

/** Whether an answer is what `--fail-on` waits for; `risky` is met by anything worse too. */
export const meets = (failOn: string | undefined, { verdict, settled }: Pick<Assessment, 'verdict' | 'settled'>): boolean => {
  switch (failOn) {
    case 'risky':
      return verdict !== 'allowed';
    case 'advise-against':
      return verdict === 'advise-against';
    case 'unsettled':
      return !settled;
    default:
      return false;
  }
};
