import type {PrintPage} from './browser.ts';

/**
 * Puts `html` in the place of what the page shows and waits until everything it carries is there.
 *
 * The browser is asked for it by name: puppeteer's `setContent` hands the text to a script that writes it, which takes
 * twice as long for a binder with photos. The session stays open, since the browser lays the page out anew when one ends.
 */
export async function showDocument(page: PrintPage, html: string): Promise<void> {
  const session = await page.createCDPSession();
  const {frameTree} = await session.send('Page.getFrameTree');
  const loaded = new Promise<void>((resolve) => {
    page.once('load', () => resolve());
  });
  await session.send('Page.setDocumentContent', {frameId: frameTree.frame.id, html});
  await loaded;
}
