import {randomBytes} from 'node:crypto';
import {createServer, type IncomingMessage, type ServerResponse} from 'node:http';
import {setTimeout as pause} from 'node:timers/promises';
import {OperationalError} from '../support/operational-error.ts';
import {followPreview} from './in-page/follow-preview.ts';
import type {PreviewMessage} from './preview-state.ts';
import {shellPage} from './shell-page.ts';

/** Milliseconds after which a page that takes nothing, such as one of a sleeping computer, is not waited for. */
const stalled = 100;

export interface PreviewServer {
  /** What to open in a browser on this machine. */
  readonly address: string;
  /**
   * Tells every page that is open; the last message of each kind is told to a page that is opened later. Resolves when
   * the message is on its way, or soon after where a page does not listen.
   */
  tell(message: PreviewMessage): Promise<void>;
  close(): Promise<void>;
}

export interface PreviewSource {
  /** The item's whole document; null when there is none. */
  document(id: string): Promise<string | null>;
  /** Somebody chose to look at this item. */
  choose(id: string): void;
}

const headers = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  // The shell runs its own script and frames our own documents, and loads nothing from anywhere else.
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'unsafe-inline'; connect-src 'self'; frame-src 'self'; img-src data:; font-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'",
} as const;

/**
 * Serves the preview on this machine's own address only, below a path that cannot be guessed: neither another computer
 * nor a page from the web nor another user can read the binder. `port` 0 takes any free one. Throws `OperationalError` when the port is taken.
 */
export async function startPreviewServer(source: PreviewSource, port: number): Promise<PreviewServer> {
  const secret = randomBytes(12).toString('hex');
  const listeners = new Set<ServerResponse>();
  const latest = new Map<PreviewMessage['kind'], string>();
  const script = `(${followPreview})();\n`;
  let host = '';

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    // A page from the web that leads its own name to this machine does not know our host and path.
    const url = new URL(request.url ?? '/', 'http://preview');
    if (request.headers.host !== host || !url.pathname.startsWith(`/${secret}/`)) return send(response, 404);
    const path = url.pathname.slice(secret.length + 2);
    const [kind, id = ''] = path.split('/').map(decodeURIComponent);
    if (request.method === 'POST' && kind === 'choose') {
      source.choose(id);
      return send(response, 204);
    }
    if (request.method !== 'GET') return send(response, 405);
    if (path === '') return send(response, 200, 'text/html', shellPage);
    if (path === 'follow.js') return send(response, 200, 'text/javascript', script);
    if (path === 'changes') return listen(request, response);
    const document = kind === 'item' ? await source.document(id) : null;
    return document === null ? send(response, 404) : send(response, 200, 'text/html', document);
  }

  /** Server-sent events (HTML standard, section 9.2). */
  function listen(request: IncomingMessage, response: ServerResponse): void {
    response.writeHead(200, {...headers, 'content-type': 'text/event-stream'});
    response.write('retry: 500\n\n');
    for (const message of latest.values()) response.write(message);
    listeners.add(response);
    request.on('close', () => listeners.delete(response));
  }

  const server = createServer((request, response) => {
    answer(request, response).catch(() => send(response, 500));
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (cause) => {
      reject(
        new OperationalError(`the preview cannot use port \`${port}\`: another program has it`, {cause}),
      );
    });
    server.listen(port, '127.0.0.1', resolve);
  });
  const bound = server.address();
  host = `127.0.0.1:${typeof bound === 'object' && bound !== null ? bound.port : port}`;

  return {
    address: `http://${host}/${secret}/`,
    async tell(message) {
      const event = `data: ${JSON.stringify(message)}\n\n`;
      latest.set(message.kind, event);
      const sent = [...listeners].map(
        (listener) => new Promise<void>((resolve) => listener.write(event, () => resolve())),
      );
      await Promise.race([Promise.all(sent), pause(stalled)]);
    },
    async close() {
      for (const listener of listeners) listener.end();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

function send(response: ServerResponse, status: number, type = 'text/plain', content = ''): void {
  if (response.headersSent) return;
  // An item's document brings a stricter policy of its own; both hold.
  response.writeHead(status, {...headers, 'content-type': `${type}; charset=utf-8`});
  response.end(content);
}
