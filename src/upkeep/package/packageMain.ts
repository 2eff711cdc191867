import { writeFileSync } from 'node:fs';
import { browserBuild } from './browserBuild.js';
import { bundledPackages, licenceNotices } from './licenceNotices.js';
import { withoutUnreached } from './withoutUnreached.js';

/* The last step of `npm run build`: dist/browser from dist, with the licences of what is bundled, and nothing in dist that no user reaches. */
writeFileSync('dist/browser/LICENSES.txt', licenceNotices(bundledPackages(await browserBuild())));
await withoutUnreached();
