import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

async function tool(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Measures' }).getByRole('link', { name }).click();
  await expect(page.getByRole('navigation', { name: 'Measures' }).getByRole('link', { name })).toHaveAttribute(
    'aria-current',
    'page',
  );
}

async function fill(page: Page, typed: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(typed)) await page.getByLabel(label, { exact: true }).fill(text);
}

for (const script of ['on', 'off'] as const) {
  test.describe(`with script ${script}`, () => {
    test.use({ javaScriptEnabled: script === 'on' });

    test('each measure is answered with its reckoning, and bad input beside its field', async ({ page }) => {
      const answer = page.locator('#answer');
      const looksRight = async () => {
        if (script === 'on') await expectAccessible(page);
        await expectNoSidewaysScroll(page);
      };
      await signIn(page, 'member');
      await page.goto('/withy-reach/deliveries');
      await page.getByRole('link', { name: 'Measures', exact: true }).click();
      await page.getByRole('link', { name: 'Ridge' }).click();
      await fill(page, { Length: '1 m', Width: '2 m', Height: 'high' });
      await page.getByRole('button', { name: 'How much is it?' }).click();
      await expect(page.locator('.notice.short')).toContainText('Give a length');
      await expect(page.getByLabel('Height')).toHaveAttribute('aria-invalid', 'true');
      await expect(page.getByLabel('Height')).toHaveAccessibleDescription(/Give a length/);
      await expect(page.getByLabel('Length')).toHaveValue('1 m');
      await looksRight();
      await fill(page, { Height: '1 m' });
      await page.getByRole('button', { name: 'How much is it?' }).click();
      await expect(page.getByLabel('Length')).toHaveAccessibleDescription(/at least as long as broad/);
      await fill(page, { Length: '4 m' });
      await page.getByLabel('What it is').selectOption('cattle-manure');
      await page.getByRole('button', { name: 'How much is it?' }).click();
      await expect(answer).toContainText('About 35 barrow-loads');
      await expect(answer).toContainText('3,047 litres');
      await answer.getByText('How it is reckoned').click();
      await expect(answer).toContainText('÷ 85 L a barrow-load');
      await expect(page.getByLabel('What it is')).toHaveValue('cattle-manure');
      await looksRight();

      await tool(page, 'Bales');
      await fill(page, { 'For this ground': '120 m2', 'Straw laid': '500 g/m2' });
      await page.getByRole('button', { name: 'How much is it?' }).click();
      await expect(answer).toContainText('5 bales for');
      await looksRight();

      await tool(page, 'Weighing by the bucket');
      await fill(page, { 'The bucket holds': '10 L', 'Empty it weighs': '600 g', 'Bucketful 1': '500 g' });
      await page.getByRole('button', { name: 'What does it weigh?' }).click();
      await expect(page.getByLabel('Bucketful 1', { exact: true })).toHaveAccessibleDescription(/more than the empty/);
      for (const nth of [1, 2, 3, 4, 5]) await fill(page, { [`Bucketful ${nth}`]: `${nth + 2}.6 kg` });
      await page.getByRole('button', { name: 'What does it weigh?' }).click();
      await expect(answer).toContainText('500 grams a litre');
      await expect(answer).toContainText(/from 300 to 700\s+g\/L/);
      await expect(page.getByRole('button', { name: 'Set its density' })).toHaveCount(0);
      await looksRight();

      await tool(page, 'A barrow');
      await fill(page, { 'The bucket holds': '10', 'Bucketfuls to the rim': '8.5', 'Bucketfuls heaped': '11' });
      await page.getByRole('button', { name: 'What does it hold?' }).click();
      await expect(answer).toContainText('85 litres level, 110 heaped');
      await looksRight();

      await tool(page, 'A jar of meal');
      await page.getByLabel('Meal').selectOption('bone-meal');
      await fill(page, { 'One jarful weighs': '325 g', 'For this ground': '10 m2', at: '100 g/m2' });
      await page.getByRole('button', { name: 'How many jars?' }).click();
      await expect(answer).toContainText('3 jars for');
      await looksRight();
      await page.getByRole('button', { name: 'Keep it as my jar' }).click();
      await expect(
        page
          .getByRole('status')
          .filter({ hasText: /Kept among your habits|It stood there already/ })
          .first(),
      ).toBeVisible();

      await tool(page, 'Feet, rods, pounds');
      await page.getByLabel('Area').fill('10 rods');
      await page.getByRole('button', { name: 'In other units' }).nth(1).click();
      await expect(answer).toContainText('10 rods in other units');
      await expect(answer.getByRole('row', { name: '252.93 m²' })).toBeVisible();
      await looksRight();
    });
  });
}

test('the secretary sets a density by the bucket, until loads are booked', async ({ page }, info) => {
  const name = `To be weighed, ${info.project.name}`;
  const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();
  await signIn(page, 'secretary');
  await page.goto('/withy-reach/office/deliveries/new');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Material').selectOption('rabbit-manure');
  await page.getByLabel('Amount').fill('8.5');
  await page.getByLabel('in', { exact: true }).selectOption('tonnes');
  await page.getByLabel('Density').fill('700');
  await page.getByLabel('Comes on').fill(inDays(5).slice(0, 10));
  await page.getByLabel('Collect by').fill(inDays(9).slice(0, 10));
  await page.getByLabel('Booking closes').fill(inDays(4).slice(0, 16));
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.getByRole('link', { name: 'Weigh it by the bucket' }).click();
  await fill(page, { 'The bucket holds': '10 L' });
  for (const nth of [1, 2, 3, 4, 5]) await fill(page, { [`Bucketful ${nth}`]: '5 kg' });
  await page.getByRole('button', { name: 'What does it weigh?' }).click();
  const label = await page.getByLabel('Delivery').locator('option', { hasText: name }).textContent();
  await page.getByLabel('Delivery').selectOption({ label: label ?? '' });
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Set its density' }).click();
  await expect(page.getByText('The density is set from the bucket test')).toBeVisible();
  await expect(page.getByText('about 200 expected')).toBeVisible();
  await page.getByLabel('Yes, it does not come').check();
  await page.getByRole('button', { name: 'Call it off', exact: true }).click();
  await expect(page.getByText('Called off.')).toBeVisible();
});
