import fs from 'node:fs';
import path from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { test as base, expect, type Page } from '@playwright/test';

export { expect };

type SignIn = { role: string; name: string; email: string; password: string };

/** A page on which any complaint of the browser fails the test. */
export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ page }, use) => {
      const complaints: string[] = [];
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on(
        'console',
        (message) => message.type() === 'error' && complaints.push(`${message.text()} ${message.location().url}`),
      );
      await use(undefined);
      expect(complaints).toEqual([]);
    },
    { auto: true },
  ],
});

/** Sign in as one of the demo society's people, by their office or their name, the way they do it. */
export async function signIn(page: Page, role: string): Promise<void> {
  const file = path.join(process.env.BARROWMOOT_STATE ?? '.data', 'demo-sign-ins.json');
  const listed: SignIn[] = JSON.parse(fs.readFileSync(file, 'utf8'));
  const who = listed.find((one) => one.role === role || one.name === role);
  if (!who) throw new Error(`the demo has nobody to sign in as ${role}`);
  await page.goto('/sign-in');
  await page.getByLabel('E-mail address').fill(who.email);
  await page.getByLabel('Password').fill(who.password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/sign-in'));
}

/** Nothing on the page that axe knows to be a barrier. */
export async function expectAccessible(page: Page): Promise<void> {
  const look = async () => {
    // A page's title may come after its heading, when it was reached by a link.
    await expect(page).toHaveTitle(/./);
    return (await new AxeBuilder({ page }).analyze()).violations;
  };
  const first = await look();
  // And it goes and comes while a page is shown anew: what is missing for good is missing the second time too.
  const violations = first.some(({ id }) => id === 'document-title') ? await look() : first;
  expect
    .soft(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`),
      page.url(),
    )
    .toEqual([]);
}

/** The page fits: nothing makes it scroll sideways. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect.soft(over, page.url()).toBeLessThanOrEqual(0);
}
