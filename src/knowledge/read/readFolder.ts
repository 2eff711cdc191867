import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readYaml, type YamlFile } from './readYaml.js';

/** The YAML files of a folder, by their path in it without the ending, in order of name. */
export const readFolder = (root: string, within: string): ReadonlyMap<string, YamlFile> => {
  const files = new Map<string, YamlFile>();
  const walk = (relative: string): void => {
    const folder = join(root, relative);
    if (!existsSync(folder)) return;
    for (const name of readdirSync(folder).sort()) {
      const path = `${relative}/${name}`;
      if (statSync(join(root, path)).isDirectory()) walk(path);
      else if (/\.ya?ml$/.test(name)) files.set(path.slice(within.length + 1).replace(/\.ya?ml$/, ''), readYaml(path, readFileSync(join(root, path), 'utf8')));
    }
  };
  walk(within);
  return files;
};
