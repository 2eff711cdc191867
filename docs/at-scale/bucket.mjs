/* A bucket of any object store that speaks S3: STORE is its URL; AWS_ACCESS_KEY_ID, AWS_SECRET_ACCESS_KEY and AWS_REGION say who asks. */
import { AwsClient } from 'aws4fetch';

const bucket = process.env.STORE;
const client = new AwsClient({ accessKeyId: process.env.AWS_ACCESS_KEY_ID, secretAccessKey: process.env.AWS_SECRET_ACCESS_KEY, region: process.env.AWS_REGION || 'us-east-1', service: 's3' });

const send = async (name, init) => {
  const response = await client.fetch(`${bucket}/${name}`, init);
  const text = await response.text();
  if (!response.ok) throw new Error(`${init.method} ${name}: ${response.status} ${text}`);
  return text;
};

/** What is stored under a name. */
export const get = async (name) => await send(name, { method: 'GET' });

/** Stores a text under a name, whole or not at all, as a bucket does by itself; the same name again replaces it. */
export const put = async (name, text) => { await send(name, { method: 'PUT', body: text }); };
