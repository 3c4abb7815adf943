import type { Locator, Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';
const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10);

/** The holder's nth bed: its page, and its address. */
async function openBed(page: Page, nth: number): Promise<string> {
  await page.goto(`${society}/ground`);
  const link = page.getByRole('table').getByRole('link').nth(nth);
  const address = (await link.getAttribute('href')) ?? '';
  await page.goto(address);
  return address;
}

const sheetOf = (page: Page, name: string | RegExp) =>
  page.locator('section', { has: page.getByRole('heading', { name, level: 2 }) });

/** One of the folded forms of the log. */
async function openLog(page: Page, ask: string): Promise<Locator> {
  const folded = sheetOf(page, 'Work done on this ground').locator('details', { hasText: ask }).last();
  await folded.locator('summary').first().click();
  return folded.locator('form');
}

test('a holder logs fresh manure and lime, and is told what that means for food, nitrogen and lime', async ({
  page,
}) => {
  await signIn(page, 'treasurer');
  const address = await openBed(page, 0);
  const manure = await openLog(page, 'Log manure or compost');
  await manure.getByLabel('Which').selectOption('cattle-manure');
  await manure.getByLabel('How much').fill('6');
  await manure.getByLabel('How old it was').fill('2');
  await manure.getByLabel('Dug at the same time').selectOption('double-digging');
  await manure.getByLabel('How deep').fill('50 cm');
  await manure.getByLabel('Done on').fill(daysAgo(5));
  await manure.getByLabel('Over a length of').fill('1 m');
  await manure.getByRole('button', { name: 'Log it' }).click();
  await expect(manure.getByText('The turn is reset there.')).toBeVisible();
  await expectAccessible(page);

  await page.goto(address);
  const done = sheetOf(page, 'Work done on this ground');
  await expect(done).toContainText('rotted cattle manure, 6 barrow-loads');
  await expect(done).toContainText('2 months old');
  await expect(done).toContainText('double digging');
  const feeds = sheetOf(page, /^What feeds this ground/);
  await expect(feeds.getByRole('region', { name: /dressings of the last twelve months/ })).toContainText(
    'cattle manure',
  );
  await feeds
    .getByText(/^Why, rotted cattle manure/)
    .first()
    .click();
  await expect(feeds.getByText(/6 kg in a tonne \(AHDB/).first()).toBeVisible();
  await expect(feeds).toContainText(/The heaviest twelve months .* the guidance/);
  await expect(feeds).toContainText('guidance, which is passed on');
  await expect(feeds).toContainText('that keeps it');

  // What is asked for is told before it is planted: raw and touching the soil.
  const ask = sheetOf(page, 'What may stand here?');
  await ask.getByLabel('Crop').selectOption('carrot');
  await ask.getByRole('button', { name: 'Judge it' }).click();
  await expect(ask.getByText(/Take no harvest of carrot before/)).toBeVisible();
  await ask.getByText(/^Why .*\?$/).click();
  await expect(ask.getByText(/lies in or on the soil; it is often eaten raw/)).toBeVisible();
  await ask.getByRole('button', { name: /^(Plan|Record) it for/ }).click();
  await page.waitForURL((url) => url.search === '');
  await expect(sheetOf(page, 'Harvests that have to wait')).toContainText('carrot before');
  await expect(sheetOf(page, /^What feeds this ground/)).toContainText('no dose');

  const lime = await openLog(page, 'Log lime');
  await lime.getByLabel('How much').fill('200 g/m²');
  await lime.getByLabel('Done on').fill(daysAgo(1));
  await lime.getByRole('button', { name: 'Log it' }).click();
  await expect(lime.getByText(/Lime came too soon after manure/)).toBeVisible();
  await page.goto(address);
  await expect(sheetOf(page, 'pH and lime')).toContainText('Too soon after manure for lime');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  test('a slip in the log stays beside its field, and lime is reckoned from a measured pH', async ({ page }) => {
    await signIn(page, 'chair');
    const address = await openBed(page, 0);
    const meal = await openLog(page, 'Log a meal');
    await meal.getByLabel('Which').selectOption('hoof-and-horn');
    await meal.getByLabel('How much').fill('a handful');
    await meal.getByRole('button', { name: 'Log it' }).click();
    const again = sheetOf(page, 'Work done on this ground').locator('form', { has: page.locator('[value="fed"]') });
    await expect(again.getByLabel('How much')).toHaveAccessibleDescription(/Give a rate such as/);
    await expect(again.getByLabel('How much')).toHaveValue('a handful');
    await expect(again.getByLabel('Which')).toHaveValue('hoof-and-horn');
    await again.getByLabel('How much').fill('70 g/m²');
    await again.getByRole('button', { name: 'Log it' }).click();
    await page.goto(address);
    await expect(sheetOf(page, 'Work done on this ground')).toContainText('hoof and horn');

    const lime = sheetOf(page, 'pH and lime');
    await lime.getByLabel('Soil').selectOption('clay-loam');
    await lime.getByLabel('For').selectOption('vegetables');
    await lime.getByLabel('Measured pH').fill('sour');
    await lime.getByRole('button', { name: 'How much lime?' }).click();
    await expect(lime.getByLabel('Measured pH')).toHaveAccessibleDescription(/Give a pH from 3.0 to 9.0/);
    await lime.getByLabel('Measured pH').fill('4.5');
    await lime.getByRole('button', { name: 'How much lime?' }).click();
    await expect(lime.getByRole('status')).toContainText('in 2 dressings a year apart');
    await lime.getByText('Why, and what others say').click();
    await expect(lime.getByText(/Accounts differ three- or fourfold/)).toBeVisible();
  });
});

test('a log is taken back, asked once', async ({ page }) => {
  await signIn(page, 'gate helper');
  const address = await openBed(page, 0);
  const straw = await openLog(page, 'Log straw');
  await straw.getByLabel('How much').fill('7.5 kg');
  await straw.getByRole('button', { name: 'Log it' }).click();
  await expect(straw.getByText('Logged.')).toBeVisible();
  await page.goto(address);
  const line = page
    .getByRole('listitem')
    .filter({ hasText: /straw, (7.5 kg|16 lb|1 st|.*7.5)/ })
    .first();
  await expect(line).toBeVisible();
  const before = await page.getByRole('listitem').filter({ hasText: 'straw' }).count();
  await line.getByText('Take back', { exact: true }).click();
  await line.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(page.getByRole('listitem').filter({ hasText: 'straw' })).toHaveCount(before - 1);
});

test('the secretary sees how many loads the site will want, and why', async ({ page }) => {
  await signIn(page, 'secretary');
  await page.goto(`${society}/office`);
  const room = page.getByRole('listitem').filter({ hasText: 'What the ground asks for' });
  await room.getByRole('link', { name: 'Open' }).click();
  const need = sheetOf(page, /barrow-loads for \d{4}$/);
  await expect(need).toContainText('due its turn');
  const loads = async () => Number((await need.getByRole('heading').innerText()).replace(/\D.*/, ''));
  const asHorse = await loads();
  await need.getByText(/^Why [\d,]+\?$/).click();
  await expect(need).toContainText('rounded up once for each holding');
  const holdings = page.getByRole('region', { name: /^What each holding needs/ });
  await expect(holdings.getByRole('row').last()).toContainText(String(asHorse));
  await expect(page.getByRole('region', { name: /season by season/ }).getByRole('row')).toHaveCount(5);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);

  await page.getByLabel('Reckoned as').selectOption('cattle-manure');
  await page.getByRole('button', { name: 'Reckon' }).click();
  await expect(page.getByLabel('Reckoned as')).toHaveValue('cattle-manure');
  expect(await loads()).toBeLessThan(asHorse);
  await page.getByRole('navigation', { name: 'Season' }).getByRole('link').nth(1).click();
  await expect(page.getByRole('navigation', { name: 'Season' }).getByRole('link').nth(1)).toHaveAttribute(
    'aria-current',
    'page',
  );
});
