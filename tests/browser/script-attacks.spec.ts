// Not the test that minds complaints: the list itself, shown as it is, makes the browser complain.
import { expect, test } from '@playwright/test';
import { postHtml } from '../../lib/platform/post-html';
import { scriptAttacks } from '../fixtures/script-attacks';

const home = 'http://attacks.test/';

// What a browser makes of it is the only judge: each attack as it is, and as a post shows it, on a page with no policy at all.
test('no attack of a published list does anything in a post; the list itself does', async ({ page }) => {
  let asked: string[] = [];
  let alerts = 0;
  page.on('dialog', (dialog) => {
    alerts++;
    return dialog.dismiss();
  });
  await page.route('**', (route) => {
    const url = route.request().url();
    if (url === home)
      return route.fulfill({
        contentType: 'text/html',
        body: '<!doctype html><title>x</title><link rel="icon" href="data:,"><main>',
      });
    asked.push(url);
    return route.fulfill({ contentType: 'text/javascript', body: 'alert(1)' });
  });
  const shown = async (html: string) => {
    [asked, alerts] = [[], 0];
    await page.goto(home);
    await page.locator('main').evaluate((main, text) => {
      main.innerHTML = text;
      for (const one of main.querySelectorAll('*')) {
        one.dispatchEvent(new MouseEvent('mouseover', { bubbles: true }));
        if (one instanceof HTMLElement) one.focus();
      }
    }, html);
    await page.waitForTimeout(20);
    const names = await page.locator('main *').evaluateAll((all) => all.map((one) => one.localName));
    return {
      alerts,
      asked: asked.length,
      strange: names.filter((name) => !/^(p|br|em|strong|ul|ol|li|blockquote|a)$/.test(name)),
    };
  };
  let bites = 0;
  for (const [heading, attack] of scriptAttacks) {
    const raw = await shown(attack);
    if (raw.alerts + raw.asked + raw.strange.length > 0) bites++;
    expect([heading, await shown(postHtml(attack))]).toEqual([heading, { alerts: 0, asked: 0, strange: [] }]);
  }
  expect(bites).toBeGreaterThan(scriptAttacks.length / 2);
});
