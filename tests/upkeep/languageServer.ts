import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';

/* The YAML language server as an editor runs it: over its standard input and output, by the Language Server Protocol. */

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
}

export interface Diagnostic {
  readonly message: string;
  readonly range: { readonly start: { readonly line: number; readonly character: number } };
}

/** A file as it is open in an editor. `|` in the text marks where the cursor stands. */
export interface Editor {
  readonly complete: (path: string, text: string) => Promise<readonly string[]>;
  readonly hover: (path: string, text: string) => Promise<string>;
  /** Of a file that was not open before. */
  readonly problems: (path: string, text: string) => Promise<readonly Diagnostic[]>;
  readonly close: () => void;
}

const settings: Readonly<Record<string, unknown>> = { validate: true, completion: true, hover: true, schemaStore: { enable: false }, format: { enable: false } };

export const openEditor = async (): Promise<Editor> => {
  const server: ChildProcessWithoutNullStreams = spawn(process.execPath, [join(dirname(createRequire(import.meta.url).resolve('yaml-language-server/package.json')), 'bin/yaml-language-server'), '--stdio']);
  const waiting = new Map<number, (result: unknown) => void>();
  const diagnosed = new Map<string, (diagnostics: readonly Diagnostic[]) => void>();
  let next = 1;
  let version = 1;
  const send = (message: Message): void => {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message });
    server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  const take = ({ id, method, params, result }: Message): void => {
    if (method === undefined && id !== undefined) waiting.get(id)?.(result);
    else if (method === 'workspace/configuration') send({ id: id!, result: (params as { items: readonly { section: string }[] }).items.map(({ section }) => (section === 'yaml' ? settings : {})) });
    else if (method === 'textDocument/publishDiagnostics') {
      const { uri, diagnostics } = params as { uri: string; diagnostics: readonly Diagnostic[] };
      diagnosed.get(uri)?.(diagnostics);
    } else if (id !== undefined) send({ id, result: null });
  };
  let received = Buffer.alloc(0);
  server.stdout.on('data', (chunk: Buffer) => {
    received = Buffer.concat([received, chunk]);
    for (;;) {
      const head = received.indexOf('\r\n\r\n');
      const length = Number(/Content-Length: (\d+)/i.exec(received.subarray(0, Math.max(head, 0)).toString())?.[1]);
      if (head < 0 || received.length < head + 4 + length) return;
      const body = received.subarray(head + 4, head + 4 + length).toString();
      received = received.subarray(head + 4 + length);
      take(JSON.parse(body) as Message);
    }
  });
  const ask = async (method: string, params: unknown): Promise<unknown> => {
    const id = next++;
    send({ id, method, params });
    return await new Promise((resolve) => waiting.set(id, resolve));
  };
  await ask('initialize', { processId: process.pid, rootUri: null, capabilities: { workspace: { configuration: true }, textDocument: { completion: { completionItem: { snippetSupport: true } }, hover: {}, publishDiagnostics: {} } } });
  send({ method: 'initialized', params: {} });

  const opened = new Set<string>();
  const open = (path: string, text: string): { readonly uri: string; readonly position: { readonly line: number; readonly character: number } } => {
    const before = text.slice(0, text.includes('|') ? text.indexOf('|') : text.length).split('\n');
    const uri = pathToFileURL(path).href;
    if (opened.has(uri)) send({ method: 'textDocument/didClose', params: { textDocument: { uri } } });
    opened.add(uri);
    send({ method: 'textDocument/didOpen', params: { textDocument: { uri, languageId: 'yaml', version: version++, text: text.replace('|', '') } } });
    return { uri, position: { line: before.length - 1, character: before.at(-1)!.length } };
  };
  return {
    complete: async (path, text) => {
      const { uri, position } = open(path, text);
      const found = (await ask('textDocument/completion', { textDocument: { uri }, position })) as { readonly items: readonly { readonly label: string }[] } | null;
      return (found?.items ?? []).map(({ label }) => label);
    },
    hover: async (path, text) => {
      const { uri, position } = open(path, text);
      const found = (await ask('textDocument/hover', { textDocument: { uri }, position })) as { readonly contents: { readonly value: string } } | null;
      return found?.contents.value ?? '';
    },
    problems: async (path, text) => {
      const found = new Promise<readonly Diagnostic[]>((resolve) => diagnosed.set(pathToFileURL(path).href, resolve));
      open(path, text);
      return await found;
    },
    close: () => {
      server.kill();
    },
  };
};
