import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

const types: Readonly<Record<string, string>> = { html: 'text/html', css: 'text/css', js: 'text/javascript', json: 'application/json', svg: 'image/svg+xml' };

/** Serves files from memory under a strict content policy, as a plain file server would; hands back its address and how to stop it. */
export const served = async (files: ReadonlyMap<string, string>): Promise<{ readonly address: string; readonly stop: () => void }> => {
  const server = createServer((request, response) => {
    const path = decodeURIComponent((request.url ?? '/').split('?')[0]!.slice(1)) || 'index.html';
    const text = files.get(path);
    response.writeHead(text === undefined ? 404 : 200, { 'content-type': `${types[path.split('.').at(-1)!] ?? 'text/plain'}; charset=utf-8`, 'content-security-policy': "default-src 'self'; script-src 'self'" });
    response.end(text ?? '');
  });
  await new Promise<void>((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, stop: () => { server.close(); } };
};
