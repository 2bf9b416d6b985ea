import type {PrintPage} from './browser.ts';
import type {PrintTrouble} from './print-job.ts';

/**
 * Lets the page load only what its document carries within itself (`data:` addresses) and stay where it is. Returns a
 * reader of what was refused so far, each address once.
 *
 * The browser's dead proxy and the document's own policy already keep it from every network and file; this is the
 * third lock, and the one that can tell.
 */
export async function refuseRequests(page: PrintPage): Promise<() => readonly PrintTrouble[]> {
  const refused = new Set<string>();
  page.on('request', (request) => {
    const isCarried = request.url().startsWith('data:') && !request.isNavigationRequest();
    if (isCarried) void request.continue().catch(() => {});
    else {
      refused.add(request.url());
      // An answer without content leaves a page that wants to go elsewhere where it is; an error would replace it.
      const answer = request.isNavigationRequest() ? request.respond({status: 204}) : request.abort();
      void answer.catch(() => {});
    }
  });
  page.on('console', (message) => {
    // What the document's policy stops never becomes a request; the browser notes it in its console.
    const text = message.text();
    if (text.includes('Content Security Policy')) refused.add(/'([^']*)'/.exec(text)?.[1] ?? text);
  });
  await page.setRequestInterception(true);
  return () =>
    [...refused].map((address) => ({
      kind: 'request refused',
      anchor: null,
      detail: `\`${address.slice(0, 120)}\``,
    }));
}
