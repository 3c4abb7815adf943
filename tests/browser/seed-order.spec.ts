import type { Page } from '@playwright/test';
import { planCrop } from './plan-crop';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const office = '/withy-reach/office';

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

test('lists are pooled, ordered, ticked off, handed out and charged', async ({ page }, info) => {
  const name = `Leeks and garlic, ${info.project.name}`;
  const variety = `Long ${info.project.name}`;
  await signIn(page, 'secretary');

  // The treasurer's and the secretary's room: an order is planned, and refused with what was typed kept.
  await page.goto(`${office}/seed`);
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Lists close').fill('2020-01-01T18:00');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await expect(page.locator('.notice.short')).toContainText('passed already');
  await expect(page.getByLabel('Name')).toHaveValue(name);
  await looksRight(page);
  const closes = new Date(Date.now() + 5 * 86_400_000).toISOString().slice(0, 10);
  await page.getByLabel('Lists close').fill(`${closes}T18:00`);
  await page.getByRole('button', { name: 'Plan it' }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
  await expect(page.getByText('Put something on the list first')).toBeVisible();
  const orderPage = page.url();
  const orderId = new URL(orderPage).pathname.split('/').at(-1) ?? '';

  const add = page.locator('form', { has: page.getByRole('button', { name: 'Add it' }) });
  await add.getByLabel('Crop').selectOption('leek');
  await add.getByLabel('Variety').fill(variety);
  await add.getByLabel('In pack 1').fill('100');
  await add.getByRole('button', { name: 'Add it' }).click();
  await expect(page.locator('.notice.short')).toContainText('Give the price of one pack');
  await expect(add.getByLabel('Variety')).toHaveValue(variety);
  await add.getByLabel('costs').first().fill('1.50');
  await add.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByText('100 seeds for £1.50')).toBeVisible();
  await looksRight(page);
  await page.getByRole('button', { name: 'Open it for lists' }).click();
  await expect(page.locator('.notice.kept')).toContainText('Open. Everybody who can be mailed is told.');

  // The secretary's own list, and that of somebody without an account.
  await page.goto(`/withy-reach/seed/orders/${orderId}`);
  await page.getByLabel(`Leek “${variety}”`).fill('1.5');
  await page.getByRole('button', { name: 'Put it down' }).click();
  await expect(page.locator('.notice.short')).toContainText('Give whole seeds');
  await expect(page.getByLabel(`Leek “${variety}”`)).toHaveValue('1.5');
  await page.getByLabel(`Leek “${variety}”`).fill('60');
  await page.getByRole('button', { name: 'Put it down' }).click();
  await expect(page.getByText('Put down: 1 thing.')).toBeVisible();
  await looksRight(page);
  await page.goto(orderPage);
  const whose = page.getByLabel('Whose');
  const other = await whose.locator('option', { hasText: 'Bea Longmire' }).getAttribute('value');
  await whose.selectOption(other ?? '');
  await page.getByRole('button', { name: 'Open their list' }).click();
  await page.getByLabel(`Leek “${variety}”`).fill('90');
  await page.getByRole('button', { name: 'Put it down' }).click();
  await expect(page.getByText('Put down: 1 thing.')).toBeVisible();

  // 150 wanted are two packs of 100; one comes, and small wants are met first.
  await page.goto(orderPage);
  await page.getByRole('button', { name: 'Close the lists now' }).click();
  await expect(page.getByRole('row', { name: new RegExp(variety) })).toContainText('2 × 100 seeds');
  await looksRight(page);
  await page.getByLabel('Postage and the like').fill('0.50');
  await page.getByRole('button', { name: 'It is ordered' }).click();
  await expect(page.locator('.notice.kept')).toContainText('frozen');
  await page.getByLabel('Packs that came').fill('3');
  await page.getByRole('button', { name: 'This came' }).click();
  await expect(page.locator('.notice.short')).toContainText('Give whole packs from 0 to 2');
  await page.getByLabel('Packs that came').fill('1');
  await looksRight(page);
  await page.getByRole('button', { name: 'This came' }).click();
  await expect(page.locator('.notice.kept')).toContainText('came short');
  await expect(page.getByRole('row', { name: new RegExp(variety) })).toContainText('short by 50 seeds');
  await expect(page.getByText('50 seeds of leek')).toHaveCount(2);

  await page
    .getByRole('button', { name: /^Handed out to/ })
    .first()
    .click();
  await expect(page.getByText('handed out', { exact: true })).toHaveCount(1);
  await looksRight(page);
  await page.getByRole('link', { name: 'Hand-out list to print' }).click();
  await expect(page.getByRole('heading', { level: 1, name: `To hand out: ${name}` })).toBeVisible();
  await looksRight(page);

  // £1.50 and 50p of postage, by halves.
  await page.goto(orderPage);
  await page.getByRole('button', { name: 'Settle it: £2.00' }).click();
  await expect(page.locator('.notice.kept')).toContainText('charged in one entry');
  await looksRight(page);
  await page.goto('/withy-reach/money');
  await expect(page.getByRole('row', { name: new RegExp(name) })).toContainText('£1.00');

  await page.goto(`/withy-reach/seed/orders/${orderId}`);
  await page.getByRole('button', { name: 'Put it into my tin' }).click();
  await expect(page.getByText('in your tin')).toBeVisible();
  await page.goto('/withy-reach/seed/tin');
  await expect(page.locator('li', { hasText: `“${variety}”` })).toContainText('from the society’s order');
  await looksRight(page);
});

test('a member sees what the plan needs, keeps a tin, and takes the list over', async ({ page }, info) => {
  const variety = `Any, ${info.project.name}`;
  await planCrop(page, 'treasurer', 'leek');
  await page.goto('/withy-reach/seed');
  await expect(page.getByRole('heading', { level: 1, name: /^Seed for \d{4}$/ })).toBeVisible();
  const plantings = page.locator('section', { hasText: 'What each planting takes' });
  await plantings
    .getByText(/^Why \d+\?/)
    .first()
    .click();
  await expect(plantings.getByText(/between rows/).first()).toBeVisible();
  await looksRight(page);

  await page.getByRole('link', { name: 'The tin', exact: true }).click();
  const put = page.locator('form', { has: page.getByRole('button', { name: 'Put it in' }) });
  await put.getByLabel('Crop').selectOption('leek');
  await put.getByLabel('Variety').fill(variety);
  await put.getByLabel('How much is in it').fill('1');
  await put.getByLabel('grams').check();
  await put.getByLabel('Year on the packet').fill('2150');
  await put.getByRole('button', { name: 'Put it in' }).click();
  await expect(page.locator('.notice.short')).toContainText('still to come');
  await expect(put.getByLabel('Variety')).toHaveValue(variety);
  await put.getByLabel('Year on the packet').fill('');
  await put.getByRole('button', { name: 'Put it in' }).click();
  await expect(page.getByText(/^In the tin: \d+ seeds/).first()).toBeVisible();
  const packet = page.locator('li', { hasText: `“${variety}”` }).first();
  await expect(packet).toContainText('year unknown');
  await packet.getByText('Use some, or all').click();
  await packet.getByRole('button', { name: 'It is used up' }).click();
  await expect(page.getByRole('heading', { name: 'Used up' })).toBeVisible();
  await looksRight(page);

  await page.goto('/withy-reach/seed/orders');
  await looksRight(page);
  await page.getByRole('link', { name: /^Seed for \d{4}$/ }).click();
  const press = page.getByRole('button', { name: /^Take over my list: \d+ things?$/ });
  const things = (await press.textContent())?.split(': ')[1] ?? '';
  await looksRight(page);
  await press.click();
  await expect(page.getByRole('heading', { name: `You want ${things}` })).toBeVisible();
  await looksRight(page);
  // Withdrawn again, so that the other screen finds it open.
  for (const field of await page.getByRole('group', { name: 'What is wanted' }).getByRole('textbox').all())
    await field.fill('');
  await page.getByRole('button', { name: 'Put it down' }).click();
  await expect(page.getByRole('heading', { name: 'Nothing is put down yet' })).toBeVisible();
});
