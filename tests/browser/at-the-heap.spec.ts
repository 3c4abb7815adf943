import type { Browser, BrowserContext, Page } from '@playwright/test';
import { phoneOf } from './newcomer';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

async function press(page: Page, name: string, words: RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await expect(page.locator('.notice', { hasText: words })).toBeVisible();
}

/** A delivery of twelve loads, shared out: four each for A3 and B8. Of a material that no other test waits for. */
async function shareOut(page: Page, name: string, material: string): Promise<string> {
  await signIn(page, 'secretary');
  await page.goto('/withy-reach/office/deliveries/new');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Material').selectOption(material);
  await page.getByLabel('Amount').fill('12');
  await page.getByLabel('in', { exact: true }).selectOption('loads');
  await page.getByLabel('Density').fill('700');
  await page.getByLabel('Comes on').fill(inDays(5).slice(0, 10));
  await page.getByLabel('Collect by').fill(inDays(9).slice(0, 10));
  await page.getByLabel('Booking closes').fill(inDays(4).slice(0, 16));
  await page.getByRole('button', { name: 'Plan it' }).click();
  await press(page, 'Open booking', /Booking is open/);
  await page.getByRole('link', { name: 'Type paper bookings in' }).click();
  await page.getByLabel('A3', { exact: true }).fill('4');
  await page.getByLabel('B8', { exact: true }).fill('4');
  await page.getByRole('button', { name: 'Enter them all' }).click();
  await expect(page.getByRole('status').first()).toContainText('2 bookings stand');
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByText('Close it now').click();
  await press(page, 'Close booking now', /Booking is closed/);
  await page.getByLabel('Barrow-loads').fill('12');
  await press(page, 'That is the heap', /The heap is measured/);
  await press(page, 'Share out 12 loads', /Confirmed/);
  return page.url().replace(/\?.*/, '');
}

async function withoutScript(browser: Browser): Promise<BrowserContext> {
  return phoneOf(browser, { javaScriptEnabled: false });
}

test('a thumb at the heap, the gate’s list without script, and a warning before it runs short', async ({
  page,
  browser,
}, info) => {
  const name = `Heap, ${info.project.name}`;
  const office = await shareOut(page, name, info.project.name === 'phone' ? 'rabbit-manure' : 'duck-manure');
  const heap = `${office.replace('/office/', '/')}/collect`;

  // The holder, on a phone, from the page of the week.
  const own = await phoneOf(browser);
  const phone = await own.newPage();
  await signIn(phone, 'member');
  const due = phone.locator('.due li', { hasText: `Collect 4 loads of “${name}”` });
  await due.getByRole('link', { name: 'At the heap' }).click();
  const count = phone.locator('.heap-count');
  await expect(count).toHaveText('0 of 4');
  const more = phone.getByRole('button', { name: 'One more load' });
  const box = await more.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(80);
  expect(box?.y).toBeGreaterThan(844 / 2);
  await looksRight(phone);
  await more.dblclick();
  await expect(count).toHaveText('1 of 4');
  await expect(count).toBeInViewport();
  await expect(phone.getByText(/^until \d\d:\d\d; later by the secretary/)).toBeVisible();
  await expect(more).not.toHaveAttribute('aria-disabled', 'true');
  await more.click();
  await expect(count).toHaveText('2 of 4');
  await phone.getByRole('button', { name: 'Undo the last' }).click();
  await expect(count).toHaveText('1 of 4');
  await phone.getByLabel('About how many loads are left?').fill('13');
  await phone.getByRole('button', { name: 'That is what I see' }).click();
  await expect(phone.locator('.field-error')).toContainText('no more than that can be left');
  await phone.getByLabel('About how many loads are left?').fill('5');
  await phone.getByRole('button', { name: 'That is what I see' }).click();
  await expect(phone.getByText('It may run short: about 5 left for 7 still to come.')).toBeVisible();
  await looksRight(phone);

  // The gate helper, with script off: a plot is found by its number.
  const gateway = await withoutScript(browser);
  const gate = await gateway.newPage();
  await signIn(gate, 'gate helper');
  await gate.goto(heap);
  await expect(gate.getByText('It may run short')).toBeVisible();
  await gate.getByLabel('Plot number').fill('a3');
  await gate.getByRole('button', { name: 'Find it' }).click();
  await expect(gate).toHaveURL(/plot=a3/);
  await gate.getByRole('button', { name: 'One more load for plot A3' }).click();
  await expect(gate.locator('.heap-list li')).toContainText('2 of 4');
  await expect(gate.locator('.heap-list li')).toHaveCount(1);
  // Their own share is above, under their own thumb.
  await gate.getByRole('button', { name: 'One more load for plot B8' }).click();
  await expect(gate.locator('.heap-count')).toHaveText('1 of 4');
  await gate.getByLabel('Plot number').fill('Z99');
  await gate.getByRole('button', { name: 'Find it' }).click();
  await expect(gate.getByText('No plot Z99 has a share here')).toBeVisible();

  // The secretary is told, and measures again.
  await page.goto(heap);
  await looksRight(page);
  await page.getByRole('link', { name: 'Measure the heap again' }).click();
  await page.getByLabel('Barrow-loads').fill('11');
  await press(page, 'Measure again', /The heap is measured/);
  await page.goto(heap);
  await expect(page.getByText('It may run short')).toHaveCount(0);
  for (const plot of ['A3', 'B8']) {
    const row = page.locator('.heap-list li', { hasText: `Plot ${plot}` });
    await row.getByText('Several at once, or no more wanted').click();
    await row.getByRole('button', { name: 'Tick these off' }).click();
    await expect(row.getByText('all fetched')).toBeVisible();
  }
  await phone.reload();
  await expect(phone.getByText('All 4 collected.')).toBeVisible();
  await expect(phone.getByRole('button', { name: 'One more load' })).toHaveCount(0);

  // Settled, what is left over is an old heap, until somebody looks and finds nothing.
  await page.goto(office);
  await press(page, 'Settle', /Credits are written/);
  await page.goto('/withy-reach/office/order');
  const left = page.locator('.heap-list li', { hasText: name });
  await expect(left).toContainText('3 loads of');
  await looksRight(page);
  await left.getByRole('button', { name: 'Nothing left' }).click();
  await expect(page.getByText('Noted: nothing is left there.')).toBeVisible();
  await expect(left).toHaveCount(0);
  await own.close();
  await gateway.close();
});
