import { writeGenerated } from './generate.js';

await writeGenerated(process.cwd());
