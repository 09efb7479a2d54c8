import { createServer, request, type Server } from 'node:https';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { generate } from 'selfsigned';

/** Files of a folder by name. */
export type Files = Map<string, Buffer>;

const contentTypes: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.css': 'text/css; charset=utf-8',
  '.png': 'image/png',
  '.xml': 'application/xml',
  '.wasm': 'application/wasm',
};

/** Headers by path, from the example file of a package; later blocks win. */
export function readHeaders(example: string, at: string): Record<string, string> {
  const headers: Record<string, string> = {};
  let applies = false;
  for (const line of example.split('\n').filter((each) => each !== '' && !each.startsWith('#'))) {
    const header = /^ {2}([\w-]+): (.+)$/.exec(line);
    if (!header) applies = line === at || (line.endsWith('/*') && at.startsWith(line.slice(0, -1)));
    else if (applies) headers[header[1] ?? ''] = header[2] ?? '';
  }
  return headers;
}

/** A static host of one folder over HTTPS on this machine, with a certificate of its own. */
export class HttpsHost {
  files: Files = new Map();
  readonly requested: string[] = [];

  private constructor(
    private readonly server: Server,
    private readonly certificate: string,
    private readonly folder: string,
  ) {}

  static async start(folder: string): Promise<HttpsHost> {
    const names = [{ type: 2 as const, value: 'localhost' }];
    const { private: key, cert } = await generate([{ name: 'commonName', value: 'localhost' }], {
      extensions: [{ name: 'subjectAltName', altNames: names }],
    });
    const server = createServer({ key, cert });
    const host = new HttpsHost(server, cert, folder);
    server.on('request', ({ url = '' }, response) =>
      host.answer(new URL(url, host.address).pathname, response),
    );
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return host;
  }

  get origin(): string {
    return `https://localhost:${(this.server.address() as AddressInfo).port}`;
  }

  get address(): string {
    return `${this.origin}${this.folder}`;
  }

  private answer(at: string, response: import('node:http').ServerResponse): void {
    this.requested.push(at);
    const body = this.files.get(at.slice(this.folder.length + 1));
    if (!at.startsWith(`${this.folder}/`) || !body) {
      response.writeHead(404).end();
      return;
    }
    const example = this.files.get('headers.example.txt')?.toString('utf8') ?? '';
    const type = contentTypes[path.extname(at)] ?? 'text/plain; charset=utf-8';
    response.writeHead(200, { 'Content-Type': type, ...readHeaders(example, at) }).end(body);
  }

  /** Fetches an address, trusting only this host's certificate. */
  fetch(url: string): Promise<{ status: number; headers: Record<string, unknown>; body: Buffer }> {
    return new Promise((resolve, reject) => {
      const call = request(url, { ca: this.certificate, family: 4 }, (answer) => {
        const chunks: Buffer[] = [];
        answer.on('data', (chunk: Buffer) => chunks.push(chunk));
        answer.on('end', () =>
          resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: Buffer.concat(chunks) }),
        );
      });
      call.on('error', reject).end();
    });
  }

  async close(): Promise<void> {
    this.server.closeAllConnections();
    await new Promise((resolve) => this.server.close(resolve));
  }
}
