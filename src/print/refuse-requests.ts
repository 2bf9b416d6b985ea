import type {PrintMessage, PrintPage, PrintRequest} from './browser.ts';
import type {PrintTrouble} from './print-job.ts';

/** Somebody who refuses requests. */
export interface Refusing {
  /** What was refused so far, each address once. */
  refused(): readonly PrintTrouble[];
  /** Leaves the page to the next document; what it asks for until then is not answered. */
  stop(): void;
}

/**
 * Lets the page load only what its document carries within itself (`data:` addresses) and stay where it is.
 *
 * The browser's dead proxy and the document's own policy already keep it from every network and file; this is the
 * third lock, and the one that can tell.
 */
export async function refuseRequests(page: PrintPage): Promise<Refusing> {
  const refused = new Set<string>();
  const answer = (request: PrintRequest) => {
    const isCarried = request.url().startsWith('data:') && !request.isNavigationRequest();
    if (isCarried) void request.continue().catch(() => {});
    else {
      refused.add(request.url());
      // An answer without content leaves a page that wants to go elsewhere where it is; an error would replace it.
      const refusal = request.isNavigationRequest() ? request.respond({status: 204}) : request.abort();
      void refusal.catch(() => {});
    }
  };
  const hear = (message: PrintMessage) => {
    // What the document's policy stops never becomes a request; the browser notes it in its console.
    const text = message.text();
    if (text.includes('Content Security Policy')) refused.add(/'([^']*)'/.exec(text)?.[1] ?? text);
  };
  page.on('request', answer);
  page.on('console', hear);
  await page.setRequestInterception(true);
  return {
    refused: () =>
      [...refused].map((address) => ({
        kind: 'request refused',
        anchor: null,
        detail: `\`${address.slice(0, 120)}\``,
      })),
    stop() {
      page.off('request', answer);
      page.off('console', hear);
    },
  };
}
