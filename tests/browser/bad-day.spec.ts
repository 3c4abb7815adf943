import type { Page } from '@playwright/test';
import { expect, expectAccessible, signIn, test } from './test';

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();

// The secretary's bad day, on a material of its own for each screen, so that credits of one run do not wait for the other.
test('postponed, a third light, an over-taker, a no-show: in the end it adds up', async ({ page }, info) => {
  const name = `Bad day, ${info.project.name}`;
  await signIn(page, 'secretary');
  await page.goto('/withy-reach/office/deliveries/new');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Material').selectOption(info.project.name === 'phone' ? 'cattle-manure' : 'mixed-manure');
  await page.getByLabel('Amount').fill('60');
  await page.getByLabel('in', { exact: true }).selectOption('loads');
  await page.getByLabel('Density').fill('700');
  await page.getByLabel('Comes on').fill(inDays(5).slice(0, 10));
  await page.getByLabel('Collect by').fill(inDays(3).slice(0, 10));
  await page.getByLabel('Booking closes').fill(inDays(4).slice(0, 16));
  await page.getByRole('button', { name: 'Plan it' }).click();
  await expect(page.locator('.notice.short')).toContainText('on the day it arrives or later');
  await expect(page.getByLabel('Name')).toHaveValue(name);
  await expect(page.getByLabel('Material')).not.toHaveValue('horse-manure');
  await page.getByLabel('Collect by').fill(inDays(12).slice(0, 10));
  await page.getByRole('button', { name: 'Plan it' }).click();
  await press(page, 'Open booking', /Booking is open/);

  await page.getByRole('link', { name: 'Type paper bookings in' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Type paper bookings in');
  const asked = page.getByRole('textbox');
  const claims = await asked.count();
  expect(claims).toBeGreaterThan(38);
  await asked.nth(0).fill('lots');
  await page.getByRole('button', { name: 'Enter them all' }).click();
  await expect(page.locator('.notice.short')).toContainText('whole loads');
  for (let nth = 0; nth < 40; nth++) await asked.nth(nth).fill('2');
  await page.getByRole('button', { name: 'Enter them all' }).click();
  await expect(page.getByRole('status').first()).toContainText('40 bookings stand');
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByText('Close it now').click();
  await press(page, 'Close booking now', /Booking is closed/);

  const later = page.locator('form', { has: page.getByRole('button', { name: 'Put it off' }) });
  await later.getByLabel('Comes on').fill(inDays(8).slice(0, 10));
  await press(page, 'Put it off', /Put off/);
  await page.getByRole('button', { name: 'Show the first preview' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Share-out');
  await expectAccessible(page);
  await page.getByRole('link', { name: 'Back to the delivery' }).click();
  await page.getByRole('link', { name: 'Run this delivery' }).click();

  // A third light: forty loads came instead of sixty.
  await page.getByLabel('Barrow-loads').fill('40');
  await press(page, 'That is the heap', /The heap is measured/);
  await press(page, 'Share out 40 loads', /Confirmed/);
  await expect(page.getByRole('heading', { name: /still to come/ })).toBeVisible();
  await expectAccessible(page);

  const beyond = page.locator('form', { has: page.getByRole('button', { name: 'Enter it' }) });
  await beyond.getByLabel('Loads beyond the share').fill('2');
  await beyond.getByLabel('Reason').fill('took two too many');
  await press(page, 'Enter it', /worked out again/);
  await press(page, 'Settle', /neither collected nor given up/i);

  await page.getByRole('link', { name: /^Tick off/ }).click();
  await page.getByText('Several at once, or no more wanted').first().click();
  await page
    .getByRole('button', { name: /^Give up/ })
    .first()
    .click();
  await expect(page.getByText(/Given up: \d+/)).toBeVisible();
  for (let left = 0; left < 60; left++) {
    const more = page.getByRole('button', { name: 'One more load' });
    const before = await more.count();
    if (before === 0) break;
    const heap = await page.locator('.lead').first().textContent();
    await more.first().click();
    await expect(page.locator('.lead').first()).not.toHaveText(heap ?? '');
  }
  await expect(page.locator('.lead').first()).toContainText(': 0 of 40 loads left');
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByRole('link', { name: 'Run this delivery' }).click();
  await press(page, 'Settle', /Credits are written/);
  await expect(page.getByText('40 of 40 loads were collected')).toBeVisible();
  await page.getByRole('link', { name: 'Credits' }).click();
  const credits = page.getByRole('region', { name: /^Credits of Rotted (cattle|manure, mixed)/ }).first();
  await expect(credits).toBeVisible();
  const figures = (await credits.locator('td.num').allTextContents()).map((text) => Number(text.replace('−', '-')));
  expect(figures.length).toBeGreaterThan(1);
  // Shown to hundredths, so each may be rounded by half of one.
  expect(Math.abs(figures.reduce((sum, figure) => sum + figure, 0))).toBeLessThanOrEqual(0.005 * figures.length + 1e-9);
});

// A step that was taken is said by the page; one that was refused, beside its form.
async function press(page: Page, name: string, words: RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await expect(page.locator('.notice', { hasText: words })).toBeVisible();
}
