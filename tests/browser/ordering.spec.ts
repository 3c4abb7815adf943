import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const office = '/withy-reach/office';

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

// For the season after the one at hand, so that what other tests order does not stand in the way.
test('the secretary plans next autumn’s trailers from what the ground needs', async ({ page }, info) => {
  const yard = `The yard, ${info.project.name}`;
  await signIn(page, 'secretary');
  await page.goto(`${office}/order`);
  await expect(page.getByRole('heading', { level: 1, name: 'What to order' })).toBeVisible();
  await looksRight(page);

  await page.getByRole('link', { name: 'Suppliers', exact: true }).click();
  await page.getByLabel('Name').fill(yard);
  await page.getByLabel('How to reach them').fill('knock at the lodge');
  await page.getByRole('button', { name: 'Add' }).click();
  await expect(page.getByRole('heading', { level: 1, name: yard })).toBeVisible();
  await expect(page.getByText('No delivery names them yet')).toBeVisible();
  const add = page.locator('form', { has: page.getByRole('button', { name: 'Add', exact: true }) });
  await add.getByLabel('Usual density').fill('5');
  await add.getByLabel('A trailer holds').fill('3000');
  await add.getByLabel('One costs').fill('40');
  await add.getByLabel('In thanks').fill('two trays of eggs');
  await add.getByRole('button', { name: 'Add' }).click();
  await expect(page.locator('.notice.short')).toContainText('from 200 to 1920 grams a litre');
  await expect(add.getByLabel('A trailer holds')).toHaveValue('3000');
  await add.getByLabel('Usual density').fill('500');
  await add.getByRole('button', { name: 'Add' }).click();
  await expect(page.getByText('Added to what they bring.')).toBeVisible();
  await expect(page.getByText('500 g a litre, as it is of theirs.')).toBeVisible();
  await looksRight(page);

  await page.getByRole('link', { name: 'What to order' }).click();
  await page
    .getByRole('link', { name: /, planned$/ })
    .first()
    .click();
  await expect(page.getByRole('link', { name: /, planned$/ }).first()).toHaveAttribute('aria-current', 'page');
  const season = Number((await page.locator('.seasons a[aria-current]').textContent())?.slice(0, 4));
  const offer = page.locator('li', { hasText: yard });
  const said = await offer.getByText(/trailer loads? of 3,000 L/).textContent();
  const trailers = Number(said?.split(' ')[0]);
  expect(trailers).toBeGreaterThan(1);
  await offer.getByText(/^Why \d+ trailer loads?\?/).click();
  await expect(offer.getByText(/wanted ÷ 1.5 t each \(3,000 L at 500 g a litre\)/)).toBeVisible();
  await looksRight(page);
  await offer.getByRole('link', { name: 'Plan it' }).click();

  await expect(page.getByText(`of 3,000 L from ${yard}`)).toBeVisible();
  await expect(page.getByLabel('Amount')).toHaveValue(String(trailers * 3));
  await expect(page.getByLabel('Density')).toHaveValue('500');
  await expect(page.getByLabel('Price')).toHaveValue((trailers * 40).toFixed(2));
  await expect(page.getByLabel('In thanks')).toHaveValue(`two trays of eggs for each of ${trailers}`);
  await looksRight(page);
  const name = `Autumn trailers, ${info.project.name}`;
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Comes on').fill(`${season - 1}-11-05`);
  await page.getByLabel('Collect by').fill(`${season - 1}-11-20`);
  await page.getByLabel('Booking closes').fill(`${season - 1}-11-01T18:00`);
  await page.getByRole('button', { name: 'Plan it' }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();

  await page.goto(`${office}/order?season=${season}`);
  const onOrder = page.getByRole('region', { name: /leaves short/ });
  await expect(onOrder.getByRole('row', { name })).toContainText('nothing');
  await expect(page.getByRole('heading', { name: `Nothing more is wanted for ${season}` })).toBeVisible();
  await page.getByLabel('Reckoned as').selectOption('straw');
  await page.getByRole('button', { name: 'Reckon' }).click();
  await expect(page.getByText(/bales? of 13 kg|who brings straw/).first()).toBeVisible();
  await looksRight(page);

  await page.goto(`${office}/suppliers`);
  await page.getByRole('link', { name: yard }).click();
  await expect(page.getByRole('region', { name: 'Deliveries of this supplier' })).toContainText(name);
  await looksRight(page);
  // The next run, or the other screen, is to find the season unordered again.
  await page.getByRole('link', { name }).click();
  await page.getByLabel('Yes, it does not come').check();
  await page.getByRole('button', { name: 'Call it off' }).click();
  await expect(page.locator('.notice', { hasText: 'Called off' })).toBeVisible();
  await page.goto(`${office}/suppliers`);
  await page.getByRole('link', { name: yard }).click();
  await page.getByText('Retire this supplier').click();
  await page.getByRole('button', { name: 'Retire', exact: true }).click();
  await expect(page.locator('.notice.short')).toContainText('Tick the box to confirm');
  await page.getByLabel('Yes, they bring nothing more').check();
  await page.getByRole('button', { name: 'Retire', exact: true }).click();
  await expect(page.getByText('Past deliveries stay as they were.')).toBeVisible();
  await expect(page.getByRole('link', { name: yard })).toHaveCount(0);
});
