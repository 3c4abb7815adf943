import fs from 'node:fs';
import type { Download } from '@playwright/test';
import { unzipped } from '../fixtures/unzip';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';

async function bytesOf(download: Download): Promise<Buffer> {
  return fs.readFileSync(await download.path());
}

test('the secretary prints what the season came to, and keeps it as tables', async ({ page }) => {
  await signIn(page, 'secretary');
  await page.goto(`${society}/deliveries`);
  await page.getByRole('link', { name: 'After the season' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('loads, credits and money');
  await expect(page.getByRole('region', { name: 'Loads by delivery' }).first()).toBeVisible();
  await expect(page.getByText('The committee alone reads this page')).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  for (const [link, head] of [
    ['By delivery, as CSV', 'season,delivery,material'],
    ['By holding, as CSV', 'season,plots,load'],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: link }).click(),
    ]);
    expect((await bytesOf(download)).toString('utf8')).toContain(head);
  }
  // On paper there is nothing to press.
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('link', { name: 'By delivery, as CSV' })).toBeHidden();
  await expect(page.getByRole('region', { name: 'Loads, money and credits by holding' }).first()).toBeVisible();
});

test('the secretary takes everything out, and the book notes it', async ({ page }) => {
  await signIn(page, 'secretary');
  await page.goto(`${society}/office`);
  await page.locator('li', { hasText: 'Take everything out' }).getByRole('link', { name: 'Open' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Take everything out' })).toBeVisible();
  await expect(page.locator('.caution')).toContainText('names, addresses');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Take it out' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^withy-reach-\d{4}-\d\d-\d\d\.zip$/);
  const files = unzipped(await bytesOf(download));
  expect([...files.keys()]).toEqual(expect.arrayContaining(['README.txt', 'bookings.csv', 'ground.json']));
  expect(files.get('bookings.csv')?.split('\r\n').length).toBeGreaterThan(3);
  await page.goto(`${society}/office/book`);
  await expect(page.getByText('exported').filter({ visible: true }).first()).toBeVisible();
});

test('a member takes out their own, and finds neither the paper nor the society’s archive', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto(`${society}/me`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Take out my own' }).click(),
  ]);
  const files = unzipped(await bytesOf(download));
  expect([...files.keys()]).toEqual(expect.arrayContaining(['README.txt', 'plantings.csv', 'account.json']));
  expect(files.get('plantings.csv')).toContain('notes');
  expect([...files.keys()]).not.toContain('suppliers.csv');
  for (const [ask, address] of [
    ['get', '/api/season/withy-reach'],
    ['post', '/api/export/withy-reach'],
  ] as const)
    expect((await page.request[ask](address)).status()).toBe(404);
  await expect(page.getByRole('link', { name: 'After the season' })).toHaveCount(0);
});
