import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { root } from '../shipped.js';

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
}

const folder = mkdtempSync(join(tmpdir(), 'sparebud-packed-'));
process.on('exit', () => { rmSync(folder, { recursive: true, force: true }); });

/** The package as npm would send it, packed from dist as `npm run build` left it. */
const tarball = join(folder, execFileSync('npm', ['pack', '--silent', '--ignore-scripts', '--pack-destination', folder], { cwd: root, encoding: 'utf8' }).trim().split('\n').at(-1)!);
export const tarballBytes = statSync(tarball).size;

/** A fresh folder of an app with the package in it; with what the package depends on, or with nothing else at all. */
export const freshApp = (name: string, depends: 'with-dependencies' | 'alone', files: Readonly<Record<string, string>> = {}): string => {
  const app = join(folder, name);
  const modules = join(app, 'node_modules');
  mkdirSync(join(modules, 'sparebud'), { recursive: true });
  execFileSync('tar', ['xzf', tarball, '--strip-components=1', '-C', join(modules, 'sparebud')]);
  if (depends === 'with-dependencies') {
    const { dependencies } = JSON.parse(readFileSync(join(modules, 'sparebud/package.json'), 'utf8')) as Manifest;
    for (const dependency of Object.keys(dependencies)) {
      mkdirSync(dirname(join(modules, dependency)), { recursive: true });
      symlinkSync(join(root, 'node_modules', dependency), join(modules, dependency));
    }
  }
  writeFileSync(join(app, 'package.json'), '{ "type": "module" }');
  for (const [path, text] of Object.entries(files)) writeFileSync(join(app, path), text);
  return app;
};

/** The package unpacked, with nothing beside it. */
export const packed = join(freshApp('packed', 'alone'), 'node_modules/sparebud');

/** The files of the package, by their paths in it. */
export const packedFiles: readonly string[] = readdirSync(packed, { recursive: true, encoding: 'utf8' }).filter((name) => statSync(join(packed, name)).isFile());

/** What an app asks, and what is answered to it: the same wherever it runs. */
export const question = { tree: { species: 'trident maple' }, operation: { op: 'repot', rootsRemoved: 0.4 }, date: '2026-11-15', where: { latitude: 45, longitude: -93.2 } };

/** An app in one module: `answer` is the whole assessment as text, or the error that came. */
export const appSource = `import { createAdvisor } from 'sparebud';
import { knowledge } from 'sparebud/knowledge';
import { places } from 'sparebud/places';
import { yearPicture } from 'sparebud/picture';

const wording = (id, params = {}) => knowledge.wording[id].replace(/\\{(\\w+)\\}/g, (_, name) => params[name]);

export const answers = async () => {
  const advisor = createAdvisor(knowledge, { places });
  const question = ${JSON.stringify(question)};
  const assessment = await advisor.assess(question);
  const { date, operation, ...told } = question;
  const year = await advisor.year({ ...told, from: '2026-11-15' });
  const plan = await advisor.plan({ ...told, steps: [{ date: '2027-03-20', operations: [operation] }] });
  const structure = { trunks: [{ id: 'main', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 400, diameterMm: 10 }] }], branches: [{ id: 'low', heightMm: 90, diameterMm: 14 }, { id: 'high', heightMm: 200, diameterMm: 8 }] };
  const built = await advisor.assess({ ...told, tree: { ...told.tree, structure }, operation: { op: 'remove-branch', branch: 'low' } });
  const refused = [];
  for (const wrong of [{ tree: { species: 'nonesuch' }, operation }, { tree: told.tree, operation: { op: 'nonesuch' } }]) await advisor.assess(wrong).catch((error) => refused.push(error.code));
  return JSON.stringify({ assessment, plan, built, refused, picture: yearPicture(year, wording).length > 1000 });
};
`;
