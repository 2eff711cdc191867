import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Metafile } from 'esbuild';

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
}

/** The folders of the packages that a build took something from. */
export const bundledPackages = ({ outputs }: Metafile): readonly string[] => {
  const inputs = Object.values(outputs).flatMap((output) => Object.entries(output.inputs)).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  const folders = inputs.flatMap(([path]) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? []);
  return [...new Set(folders)].sort();
};

/** Whose work is bundled, under which licence: the notices that each of these asks to be kept. */
export const licenceNotices = (folders: readonly string[]): string => {
  const notices = folders.map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest;
    const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
    if (file === undefined) throw new Error(`${name} has no licence file to keep`);
    return `${name} ${version} (${license ?? 'licence below'})\n\n${readFileSync(join(folder, file), 'utf8').trim()}\n`;
  });
  return `These packages are bundled, whole or in part, into the modules of this folder.\n\n${notices.join(`\n${'-'.repeat(72)}\n\n`)}`;
};
