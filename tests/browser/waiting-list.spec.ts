import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();
const society = '/withy-reach';

/** A page of somebody's own, signed in. */
async function pageOf(page: Page, role: string): Promise<Page> {
  const context = await page.context().browser()?.newContext();
  if (!context) throw new Error('there is no browser');
  const own = await context.newPage();
  await signIn(own, role);
  return own;
}

async function press(page: Page, button: string, said: RegExp): Promise<void> {
  await page.getByRole('button', { name: button, exact: true }).click();
  await expect(page.getByRole('status').first()).toContainText(said);
}

async function look(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

// On a material of its own for each screen, so that the deliveries of one run do not wait for the other's.
test('a standing booking books by itself; what it gives up goes to who came late', async ({ page }, info) => {
  const name = `Late load, ${info.project.name}`;
  const holder = await pageOf(page, 'member');
  await holder.goto(`${society}/deliveries/standing`);
  await holder.getByLabel('At most').fill('many');
  await holder.getByRole('button', { name: 'Let it stand', exact: true }).click();
  await expect(holder.locator('.notice.short')).toContainText('whole number');
  await expect(holder.getByLabel('At most')).toHaveValue('many');
  await holder.getByLabel('When').selectOption('always');
  // Whatever the ground needs by now, it is a load at least.
  await holder.getByLabel('At most').fill('1');
  await holder.getByRole('button', { name: 'Let it stand', exact: true }).click();
  await expect(holder.getByRole('heading', { name: 'Rotted manure' })).toBeVisible();
  await look(holder);

  await signIn(page, 'secretary');
  const address = await openLoad(page, name, info.project.name === 'phone' ? 'sheep-manure' : 'goat-manure');
  await holder.goto(`${society}${address}`);
  await expect(holder.getByText('Booked by your standing booking')).toBeVisible();
  await look(holder);

  await page.goto(`${society}/office${address}`);
  await page.getByText('Close it now').click();
  await press(page, 'Close booking now', /Booking is closed/);
  const late = await pageOf(page, 'treasurer');
  await late.goto(`${society}${address}`);
  await late.getByLabel('Barrow-loads you ask for').fill('3');
  await late.getByRole('button', { name: 'Put me on the waiting list' }).click();
  await expect(late.getByRole('heading', { name: 'On the waiting list for 3 loads' })).toBeVisible();
  await expect(late.getByText('You are number 1 of 1 on it')).toBeVisible();
  await look(late);

  await page.goto(`${society}/office${address}`);
  await page.getByLabel('Barrow-loads', { exact: true }).fill('1');
  await press(page, 'That is the heap', /The heap is measured/);
  await press(page, 'Share out 1 load', /Confirmed/);
  await expect(page.getByRole('heading', { name: 'The waiting list: 1' })).toBeVisible();
  await look(page);

  await holder.goto(`${society}${address}/collect`);
  await holder.getByText('Several at once, or no more wanted').first().click();
  await holder.getByRole('button', { name: /^Give up the other/ }).click();
  await expect(holder.getByRole('status').first()).toContainText('Given up: 1');
  await late.goto(`${society}${address}`);
  await expect(late.getByText('1 load is yours so far')).toBeVisible();

  await holder.goto(`${society}/deliveries/standing`);
  await holder.getByText('End it: rotted manure').click();
  await holder.getByRole('button', { name: 'Yes, end it', exact: true }).click();
  await expect(holder.getByText('Nothing is booked by itself yet.')).toBeVisible();
  for (const own of [holder, late]) await own.context().close();
});

/** Plan a load and open it; its address below the society's. */
async function openLoad(page: Page, name: string, material: string): Promise<string> {
  await page.goto(`${society}/office/deliveries/new`);
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Material').selectOption(material);
  await page.getByLabel('Amount').fill('60');
  await page.getByLabel('in', { exact: true }).selectOption('loads');
  await page.getByLabel('Density').fill('500');
  await page.getByLabel('Comes on').fill(inDays(5).slice(0, 10));
  await page.getByLabel('Collect by').fill(inDays(12).slice(0, 10));
  await page.getByLabel('Booking closes').fill(inDays(4).slice(0, 16));
  await page.getByRole('button', { name: 'Plan it' }).click();
  await expect(page.getByText(/standing booking.* will ask for about/)).toBeVisible();
  await press(page, 'Open booking', /Booking is open/);
  return `/deliveries/${/deliveries\/([0-9a-f-]+)/.exec(page.url())?.[1]}`;
}
