import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/* A folder that all machines see, in place of an object store; STORE is its path. */
const folder = process.env.STORE ?? 'store';

/** What is stored under a name. */
export const get = async (name) => await readFile(join(folder, name), 'utf8');

/** Stores a text under a name, whole or not at all; the same name again replaces it. */
export const put = async (name, text) => {
  const path = join(folder, name);
  await mkdir(dirname(path), { recursive: true });
  const unfinished = `${path}.${process.pid}.unfinished`;
  await writeFile(unfinished, text);
  await rename(unfinished, path);
};
