import { writeFileSync } from 'node:fs';
import { browserBuild } from './browserBuild.js';
import { bundledPackages, licenceNotices } from './licenceNotices.js';
import { nodeBuild } from './nodeBuild.js';
import { withoutUnreached } from './withoutUnreached.js';

/* The last step of `npm run build`: dist/browser, and what Node loads in a few files, from dist; each with the licences of what is bundled, and nothing in dist that no user reaches. */
const forBrowsers = await browserBuild();
const forNode = await nodeBuild();
writeFileSync('dist/browser/LICENSES.txt', licenceNotices(bundledPackages(forBrowsers)));
writeFileSync('dist/parts/LICENSES.txt', licenceNotices(bundledPackages(forNode)));
withoutUnreached(forBrowsers, forNode);
