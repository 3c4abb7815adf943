import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';
const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

const pence = (text: string | null) => Math.round(Number((text ?? '').replace(/[£,]/g, '').replace('−', '-')) * 100);
const pounds = (minor: number) => (minor / 100).toFixed(2);
const sum = (numbers: readonly number[]) => numbers.reduce((before, one) => before + one, 0);
const formOf = (page: Page, button: string) =>
  page.locator('form', { has: page.getByRole('button', { name: button }) });

/** A column of the table of that name, without its heading and its foot. */
async function column(page: Page, table: string, nth: number): Promise<number[]> {
  const cells = page.getByRole('region', { name: table }).locator(`tbody tr td:nth-child(${nth})`);
  return (await cells.allTextContents()).map(pence);
}

const foot = (page: Page, table: string, nth: number) =>
  page.getByRole('region', { name: table }).locator(`tfoot td:nth-child(${nth})`).textContent();

// A delivery of a material of its own for each screen, so that no other test waits for it.
async function settleOne(page: Page, name: string, material: string, price: string): Promise<void> {
  await page.goto(`${society}/office/deliveries/new`);
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Material').selectOption(material);
  await page.getByLabel('Amount').fill('20');
  await page.getByLabel('in', { exact: true }).selectOption('loads');
  await page.getByLabel('Density').fill('800');
  await page.getByLabel('Comes on').fill(inDays(0).slice(0, 10));
  await page.getByLabel('Collect by').fill(inDays(9).slice(0, 10));
  await page.getByLabel('Booking closes').fill(inDays(4).slice(0, 16));
  await page.getByLabel('Price').fill(price);
  await page.getByRole('button', { name: 'Plan it' }).click();
  await press(page, 'Open booking', /Booking is open/);
  await page.getByRole('link', { name: 'Type paper bookings in' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Type paper bookings in');
  for (const [nth, loads] of ['1', '2', '4'].entries()) await page.getByRole('textbox').nth(nth).fill(loads);
  await page.getByRole('button', { name: 'Enter them all' }).click();
  await expect(page.getByRole('status').first()).toContainText('3 bookings stand');
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByText('Close it now').click();
  await press(page, 'Close booking now', /Booking is closed/);
  await page.getByLabel('Barrow-loads').fill('20');
  await press(page, 'That is the heap', /The heap is measured/);
  await press(page, 'Share out 20 loads', /Confirmed/);
  const office = page.url().replace(/\?.*/, '');
  await page.goto(`${office.replace('/office/', '/')}/collect`);
  for (let left = 0; left < 9; left++) {
    const more = page.getByRole('button', { name: 'One more load' });
    if ((await more.count()) === 0) break;
    const heap = await page.locator('.lead').first().textContent();
    await more.first().click();
    await expect(page.locator('.lead').first()).not.toHaveText(heap ?? '');
  }
  await page.goto(office);
  await press(page, 'Settle', /the price is charged by loads taken/);
}

// A step that was taken is said by the page.
async function press(page: Page, name: string, words: RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await expect(page.locator('.notice', { hasText: words })).toBeVisible();
}

test('the treasurer reconciles a season’s deliveries to the penny', async ({ page }, info) => {
  const isPhone = info.project.name === 'phone';
  const name = `Settled load, ${info.project.name}`;
  await signIn(page, 'secretary');
  await settleOne(page, name, isPhone ? 'duck-manure' : 'hen-manure', '49.99');

  await page.context().clearCookies();
  await signIn(page, 'treasurer');
  await page.goto(`${society}/office`);
  await page
    .locator('li', { hasText: 'Deliveries to the penny' })
    .or(page.locator('li', { hasText: 'deliveries to the penny' }))
    .getByRole('link')
    .click();
  await expect(page.getByRole('heading', { level: 1, name: 'Money' })).toBeVisible();
  await looksRight(page);
  const held = await column(page, 'What each holding owes', 3);
  const credit = await column(page, 'What each holding owes', 4);
  const others = await column(page, 'The other accounts', 2);
  expect(sum(held) - sum(credit) + sum(others)).toBe(0);
  expect(pence(await foot(page, 'What each holding owes', 3))).toBe(sum(held));
  expect(await foot(page, 'The other accounts', 2)).toBe('£0.00');

  // The season: each price is what was charged and written off.
  await page.getByRole('link', { name: 'Deliveries to the penny' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('to the penny');
  await looksRight(page);
  const [prices, charged, off, left] = await Promise.all(
    [3, 4, 5, 6].map((nth) => column(page, 'Settled deliveries', nth)),
  );
  expect(prices?.length).toBeGreaterThan(0);
  expect(prices).toEqual(charged?.map((minor, nth) => minor + (off?.[nth] ?? 0) + (left?.[nth] ?? 0)));
  expect(pence(await foot(page, 'Settled deliveries', 3))).toBe(sum(prices ?? []));

  // One delivery: the parts sum to the price, each with its reason.
  await page.getByRole('link', { name }).click();
  await expect(page.getByRole('heading', { level: 1, name: new RegExp(name) })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'It adds up to the penny' })).toBeVisible();
  await expect(page.getByText('every part is the same')).toBeVisible();
  const parts = await column(page, 'Each holding’s part', 3);
  expect(parts).toHaveLength(3);
  expect(sum(parts)).toBe(4999);
  await page.getByText('Why?').first().click();
  await expect(page.getByText('£49.99 × 1 of 7 loads is £7.14 and').first()).toBeVisible();
  await looksRight(page);
  const reconcile = page.url();

  // The invoice says another price.
  await page.getByText('Put it right', { exact: true }).first().click();
  const right = formOf(page, 'Put it right');
  await right.getByLabel('The right price').fill('a lot');
  await right.getByLabel('Reason').fill('the invoice says so');
  await right.getByRole('button', { name: 'Put it right' }).click();
  await expect(page.locator('.notice.short')).toContainText('in pounds');
  await expect(right.getByLabel('Reason')).toHaveValue('the invoice says so');
  await right.getByLabel('The right price').fill('52.40');
  await press(page, 'Put it right', /worked out anew/);
  const now = await column(page, 'Each holding’s part', 3);
  expect(sum(now)).toBe(5240);
  await expect(page.getByRole('region', { name: 'Entries' }).locator('tbody tr')).toHaveCount(6);

  // The first holding pays its part; by mistake twice, and one of them is taken back.
  const plot = page.getByRole('region', { name: 'Each holding’s part' }).locator('tbody tr').first().getByRole('link');
  await plot.click();
  await page.getByRole('link', { name: 'Enter a payment' }).click();
  await looksRight(page);
  const owed = Math.max(...now) + 100_000;
  const pay = formOf(page, 'Enter the payment');
  for (const words of ['by hand', 'by hand, once more']) {
    await pay.getByLabel('Amount').fill(pounds(owed));
    await pay.getByLabel('Words').fill(words);
    await pay.getByRole('button', { name: 'Enter the payment' }).click();
    await expect(page.getByRole('status')).toContainText('Entered: £1,0');
  }
  await page.goto(reconcile);
  await expect(page.getByRole('region', { name: 'Each holding’s part' }).locator('tbody tr').first()).toContainText(
    'paid',
  );
  await page.goto(`${society}/office/money/ledger?kind=payment`);
  await page.getByRole('link', { name: 'by hand, once more' }).first().click();
  await looksRight(page);
  await page.getByLabel('Reason').fill('entered twice');
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(page.locator('.notice.short')).toContainText('Tick the box');
  await page.getByLabel('Yes, it is wrong').check();
  await press(page, 'Take it back', /Taken back/);

  // The supplier is paid, and everything still sums to nothing.
  await page.goto(reconcile);
  await page.getByRole('link', { name: 'Enter what the supplier was paid' }).click();
  const supplier = formOf(page, 'Enter what was paid');
  await supplier.getByLabel('Amount').fill('52.40');
  await supplier.getByLabel('Whom, and what for').fill('the poultry farm');
  await supplier.getByRole('button', { name: 'Enter what was paid' }).click();
  await expect(page.getByRole('status')).toContainText('Entered: £52.40');
  await page.goto(reconcile);
  await expect(page.locator('dl')).toContainText('still to pay them£0.00');
  await page.goto(`${society}/office/money`);
  expect(await foot(page, 'The other accounts', 2)).toBe('£0.00');
  for (const path of ['/office/money/ledger', '/office/money/accounts', '/office/money/enter']) {
    await page.goto(`${society}${path}`);
    await looksRight(page);
  }
});

test('a holder reads what they owe and why, on paper and as a table too', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto(`${society}/deliveries`);
  await page.getByRole('link', { name: 'Your account' }).click();
  await expect(page.locator('.lead')).toContainText(/You owe £|Nothing is owed|in credit/);
  await page
    .getByText(/^Why £/)
    .first()
    .click();
  await expect(page.getByText(/£152\.00 × \d+ of 190 loads is £/)).toBeVisible();
  await looksRight(page);
  const file = page.waitForEvent('download');
  await page.getByRole('link', { name: 'As CSV' }).first().click();
  expect((await file).suggestedFilename()).toMatch(/^account-A3-.*\.csv$/);
  await page.getByRole('link', { name: 'Statement to print' }).first().click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('statement of plot A3');
  await looksRight(page);
  // The rest of the ledger is not there for them.
  for (const path of ['/office/money', '/office/money/ledger', '/office/money/enter'])
    expect((await page.request.get(`${society}${path}`)).status()).toBe(404);
  expect((await page.request.get(`/api/money/withy-reach?what=ledger`)).status()).toBe(404);
});
