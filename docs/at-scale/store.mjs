/** Where batches and answers are kept: an object store where STORE is the URL of a bucket, else a folder. */
export const { get, put } = /^https?:/.test(process.env.STORE ?? '') ? await import('./bucket.mjs') : await import('./folder.mjs');
