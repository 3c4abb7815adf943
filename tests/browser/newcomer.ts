import type { Browser, BrowserContext, Page } from '@playwright/test';
import { expect, signIn } from './test';

/** The secretary takes somebody in and lets them a plot of ten rods; the link with which they join. */
export async function inviteNewcomer(page: Page, name: string, plotNumber: string): Promise<string> {
  await signIn(page, 'secretary');
  await page.goto('/withy-reach/office/members');
  const add = page.locator('form', { has: page.getByLabel('Make an invitation link at once') });
  await add.getByLabel('Name').fill(name);
  await add.getByLabel('Make an invitation link at once').check();
  await add.getByRole('button', { name: 'Add' }).click();
  const told = await page.getByRole('status').textContent();
  const link = /https?:\S+/.exec(told ?? '')?.[0] ?? '';
  expect(link).toContain('/join/');
  await page.goto('/withy-reach/office/plots');
  const form = page.locator('form', { has: page.getByLabel('Number') });
  await form.getByLabel('Number').fill(plotNumber);
  await form.getByLabel('Size').fill('10');
  await form.getByRole('button', { name: 'Add' }).click();
  await expect(page.getByRole('status')).toContainText('Added');
  await page.getByRole('link', { name: plotNumber, exact: true }).click();
  await page.getByLabel(name).check();
  await page.getByRole('button', { name: 'Let it' }).click();
  await expect(page.getByRole('heading', { name: 'Who holds it' })).toBeVisible();
  return link;
}

/** A phone of their own, held upright. */
export async function phoneOf(browser: Browser, also: { javaScriptEnabled?: boolean } = {}): Promise<BrowserContext> {
  return browser.newContext({ viewport: { width: 390, height: 844 }, ...also });
}
