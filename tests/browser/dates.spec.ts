import { planCrop } from './plan-crop';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';

test('a holder sees what is to be done when, and looks up any crop', async ({ page }) => {
  await planCrop(page, 'treasurer', 'onion');
  await page.goto(`${society}/dates`);
  await expect(page.getByRole('heading', { level: 1, name: 'When to sow, plant and clear' })).toBeVisible();
  await expect(page.getByText('assumed, until the society sets its own')).toBeVisible();
  // Long-season onions are sown in January, whatever the day of the test.
  const days = page.getByRole('region', { name: 'Windows in days' });
  await expect(days.getByRole('row', { name: /^Onion/ }).first()).toContainText('1 Jan – 31 Jan');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: 'Look up any crop' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Dates of any crop');
  await page.getByRole('link', { name: 'Potatoes and kin' }).click();
  await expect(page.getByRole('region', { name: /Windows in days/ })).toContainText('Potato, early');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});

test('a holder types the soil’s temperature and is told what comes up', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto(`${society}/dates/crops?group=roots`);
  await page.getByLabel('My soil’s temperature').fill('7');
  await page.getByRole('button', { name: 'What comes up?' }).click();
  const soil = page.getByRole('region', { name: 'Soil temperature and days to emerge' });
  await expect(soil.getByRole('row', { name: /^Parsnip/ })).toContainText('up in 27 to 57 days');
  await page.getByLabel('My soil’s temperature').fill('warm');
  await page.getByRole('button', { name: 'What comes up?' }).click();
  await expect(page.getByText('Give degrees Celsius, such as 7')).toBeVisible();
  await expect(page.getByLabel('My soil’s temperature')).toHaveValue('warm');
  await expectAccessible(page);
});

test('a crop planned on a bed is recorded as planted, and its line goes', async ({ page }) => {
  const next = new Date().getFullYear() + 1;
  await planCrop(page, 'chair', 'garlic');
  await expect(page.getByRole('region', { name: 'What stood on this ground' })).toContainText('Garlic');
  await page.goto(`${society}/dates`);
  const line = page.locator('.in-window > li', { hasText: `Garlic, ${next}` }).filter({ hasText: 'plant' });
  await expect(line.first()).toBeVisible();
  const closed = line.first().getByText('Done already? Say when');
  if (await closed.count()) await closed.click();
  const form = line.first().locator('form').first();
  // Garlic of the year to come is planted from the autumn on: earlier in the year the day belongs to this season, and is refused in words.
  await form.getByRole('button').click();
  if (new Date().getMonth() >= 8) await expect(line.filter({ has: page.getByRole('button') })).toHaveCount(0);
  else await expect(page.getByText(`it is planned for ${next}`).first()).toBeVisible();
});

test('forms work with script off', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await signIn(page, 'member');
  await page.goto(`${society}/dates/crops?group=legumes`);
  await page.getByLabel('My soil’s temperature').fill('50 F');
  await page.getByRole('button', { name: 'What comes up?' }).click();
  await expect(page.getByRole('region', { name: 'Soil temperature and days to emerge' })).toContainText('too cold');
  await context.close();
});

test('the secretary sets the society’s frosts, in words', async ({ page }) => {
  await signIn(page, 'secretary');
  await page.goto(`${society}/office/settings?rule=lastFrost`);
  await expect(page.getByLabel('Value')).toHaveValue('1 May');
  await page.getByLabel('Value').fill('1 July');
  await page.getByRole('button', { name: 'Set it' }).click();
  await expect(page.getByText('from 1 February to 30 June').first()).toBeVisible();
  await expectAccessible(page);
});
