import fc from 'fast-check';

/* Random cases of the tests are the same in each run; the long run of the laws draws new ones, and prints the seed of what fails. */
if (process.env['LAWS'] === undefined) fc.configureGlobal({ seed: 20261125 });
