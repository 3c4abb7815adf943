import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';
const year = new Date().getFullYear();

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

/** Record a crop for this season on the first bed of the viewer's first plot, and stay on the bed's page. */
async function plant(page: Page, crop: string): Promise<void> {
  await page.goto(`${society}/ground`);
  await page.locator('a[href*="/ground/beds/"]').first().click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('bed');
  await page.getByLabel('Crop', { exact: true }).selectOption({ label: crop });
  await page.getByLabel('Season', { exact: true }).fill(String(year));
  await page.getByRole('button', { name: 'Judge it' }).click();
  const rows = page.getByRole('row', { name: new RegExp(`${year} ${crop}`) });
  const before = await rows.count();
  await page.getByRole('button', { name: `Record it for ${year}` }).click();
  await expect(rows).toHaveCount(before + 1);
}

for (const script of ['on', 'off'] as const) {
  test.describe(`with script ${script}`, () => {
    test.use({ javaScriptEnabled: script === 'on' });

    test('a harvest is logged from the bed, corrected, seen among the yields and taken back', async ({ page }) => {
      await signIn(page, 'member');
      await plant(page, 'Chard and leaf beet');
      await page.getByRole('row', { name: /Chard/ }).getByRole('link', { name: 'Log a harvest' }).first().click();
      await expect(page.getByRole('heading', { level: 1, name: /Log a harvest: Chard and leaf beet/ })).toBeVisible();
      if (script === 'on') await looksRight(page);

      // What is no weight is refused, and what was typed stays.
      await page.getByLabel('How much').fill('a bagful');
      await page.getByLabel('middling').check();
      await page.getByRole('button', { name: 'Log it' }).click();
      await expect(page.locator('.notice.short')).toContainText('Give a weight such as');
      await expect(page.getByLabel('How much')).toHaveValue('a bagful');
      await expect(page.getByLabel('middling')).toBeChecked();
      if (script === 'on') await looksRight(page);
      await page.getByLabel('How much').fill('9 lb 4 oz');
      await page.getByRole('button', { name: 'Log it' }).click();
      await expect(page.locator('.notice.kept')).toContainText('Logged: 9 lb 4 oz, Chard and leaf beet');
      if (script === 'on') await looksRight(page);

      const item = page.getByRole('listitem').filter({ hasText: '9 lb 4 oz Chard and leaf beet, middling' }).first();
      await item.getByText('Correct or take back').click();
      await item.getByRole('link', { name: 'Correct it' }).click();
      await expect(page.getByLabel('How much')).toHaveValue('4196 g');
      await page.getByLabel('How much').fill('2 lb');
      await page.getByLabel('good').check();
      await page.getByRole('button', { name: 'Correct it' }).click();
      await expect(page.locator('.notice.kept')).toContainText('Logged: 2 lb, Chard and leaf beet');
      await expect(page.getByText('9 lb 4 oz Chard')).toHaveCount(0);

      await page.getByRole('link', { name: 'What the ground yielded' }).click();
      const row = page.getByRole('row', { name: new RegExp(`^Chard and leaf beet ${year}, bed .*so far`) }).first();
      await expect(row).toContainText('2 lb');
      if (script === 'on') await looksRight(page);

      await page.goto(`${society}/ground/harvests`);
      const corrected = page.getByRole('listitem').filter({ hasText: '2 lb Chard and leaf beet, good' }).first();
      await corrected.getByText('Correct or take back').click();
      await corrected.getByRole('button', { name: 'Take it back' }).click();
      await expect(page.getByText('The harvest is taken back.')).toBeVisible();
      await expect(page.getByText('2 lb Chard and leaf beet, good')).toHaveCount(0);
    });
  });
}

test('onions go from the ground to the store, and the ground is free', async ({ page }) => {
  await signIn(page, 'member');
  await plant(page, 'Onion');
  await page.goto(`${society}/ground/harvests`);
  await looksRight(page);
  const standing = page.getByRole('link', { name: /^Onion plot/ });
  await expect(standing.first()).toBeVisible();
  const before = await standing.count();
  await standing.last().click();
  await page.getByLabel('counted').check();
  await page.getByLabel('How much').fill('60');
  await page.getByLabel('That was the last of it').check();
  await page.getByRole('button', { name: 'Log it' }).click();
  await expect(page.locator('.notice.kept')).toContainText('Logged: 60, Onion');
  await expect(page.getByRole('link', { name: 'Put it in store' })).toHaveAttribute(
    'href',
    /\/store\/lots\/new\?harvest=[0-9a-f-]{36}$/,
  );
  await expect(standing).toHaveCount(before - 1);
});

test('a member takes their harvests home as a table', async ({ page }) => {
  await signIn(page, 'secretary');
  await page.goto(`${society}/ground/harvests/yields`);
  await looksRight(page);
  const href = await page.getByRole('link', { name: 'All harvests as CSV' }).getAttribute('href');
  const reply = await page.request.get(href ?? '');
  expect(reply.headers()['content-type']).toContain('text/csv');
  expect(await reply.text()).toMatch(/day,plot,bed,crop,variety,season,weight g,pieces,quality/);
});
