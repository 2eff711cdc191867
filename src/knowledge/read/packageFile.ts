import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** A file of this package by its path in it, wherever the module that asks for it came to be bundled. */
export const packageFile = (path: string): string => join(dirname(createRequire(import.meta.url).resolve('sparebud/package.json')), path);
