import type { Locator, Page } from '@playwright/test';
import { expect, expectAccessible, signIn, test } from './test';

const society = '/withy-reach';

/** The field is marked as wrong, and what is wrong is written beside it and read out with it. */
async function expectWrong(field: Locator, words: RegExp): Promise<void> {
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(field).toHaveAccessibleDescription(words);
  const by = (await field.getAttribute('aria-describedby'))?.split(' ').at(-1) ?? '';
  await expect(field.page().locator(`[id="${by}"]`)).toBeVisible();
  await expect(field.page().locator(`[id="${by}"]`)).toHaveText(words);
}

/** The summary names what is wrong, and its link leads to the field. */
async function expectLinked(form: Locator, words: RegExp, field: Locator): Promise<void> {
  const link = form.getByRole('alert').getByRole('link', { name: words });
  await expect(link).toBeVisible();
  const target = (await link.getAttribute('href'))?.slice(1) ?? '';
  const holds = await field.evaluate(
    (element, id) => element.id === id || document.getElementById(id)?.contains(element) === true,
    target,
  );
  expect(holds, `the link ${words} leads to its field`).toBe(true);
}

const formWith = (page: Page, button: string) =>
  page.locator('form', { has: page.getByRole('button', { name: button, exact: true }) });

async function send(form: Locator, button: string): Promise<void> {
  await form.getByRole('button', { name: button, exact: true }).click();
  await expect(form.getByRole('alert')).toBeVisible();
}

for (const script of ['on', 'off'] as const) {
  test.describe(`with script ${script}`, () => {
    test.use({ javaScriptEnabled: script === 'on' });

    test('text, several lines and round buttons', async ({ page }) => {
      await signIn(page, 'member');
      await page.goto(`${society}/me`);
      const form = formWith(page, 'Save');
      const [name, phone] = [form.getByLabel('Name', { exact: true }), form.getByLabel('Telephone')];
      const units = form.getByRole('radiogroup', { name: 'You measure in' });
      await name.fill('   ');
      await phone.fill('0'.repeat(31));
      await form.getByLabel('Postal address').fill('1 The Lane 🌱\nשדה');
      // A browser sends no round button where none was chosen.
      await units
        .getByRole('radio')
        .evaluateAll((all) => all.forEach((one) => ((one as HTMLInputElement).checked = false)));
      await send(form, 'Save');
      await expectWrong(name, /Give the member’s name/);
      await expectWrong(phone, /Keep the telephone number to 30/);
      await expectWrong(units, /Choose metres or feet/);
      await expectLinked(form, /Give the member’s name/, name);
      await expectLinked(form, /Choose metres or feet/, units);
      await expect(form.locator('.field-error')).toHaveCount(3);
      await expect(phone).toHaveValue('0'.repeat(31));
      await expect(form.getByLabel('Postal address')).toHaveValue('1 The Lane 🌱\nשדה');
      if (script === 'on') await expectAccessible(page);
    });

    test('numbers, days, times and lists', async ({ page }) => {
      await signIn(page, 'secretary');
      await page.goto(`${society}/office/deliveries/new`);
      const form = formWith(page, 'Plan it');
      const typed: readonly (readonly [string, string])[] = [
        ['Name', 'A load for the test'],
        ['Amount', '-12'],
        ['Density', '1e308'],
        ['Comes on', '2027-05-01'],
        ['Collect by', '2027-05-09'],
        ['Booking closes', '2027-04-28T18:00'],
        ['Where there', 'by the 🚪'],
        ['Unloaders wanted', 'three'],
      ];
      for (const [label, text] of typed) await form.getByLabel(label, { exact: true }).fill(text);
      await form.getByLabel('Material').selectOption('straw');
      await form.getByLabel('in', { exact: true }).selectOption('m3');
      await send(form, 'Plan it');
      for (const [label, words] of [
        ['Amount', /above 0/],
        ['Density', /density in grams a litre as a whole number/],
        ['Unloaders wanted', /whole number from 0 to 50/],
      ] as const) {
        await expectWrong(form.getByLabel(label, { exact: true }), words);
        await expectLinked(form, words, form.getByLabel(label, { exact: true }));
      }
      for (const [label, text] of typed) await expect(form.getByLabel(label, { exact: true })).toHaveValue(text);
      await expect(form.getByLabel('Material')).toHaveValue('straw');
      await expect(form.getByLabel('in', { exact: true })).toHaveValue('m3');
    });

    test('a day left empty, a list and a box to tick', async ({ page }) => {
      await signIn(page, 'secretary');
      await page.goto(`${society}/office/crops`);
      const form = formWith(page, 'Add');
      await form.getByLabel('Takes manure').check();
      await form.getByLabel('Botanical family').fill('Apiaceae');
      await send(form, 'Add');
      await expectWrong(form.getByLabel('Name', { exact: true }), /Give the crop’s name/);
      await expect(form.getByLabel('Takes manure')).toBeChecked();
      await expect(form.getByLabel('Botanical family')).toHaveValue('Apiaceae');
    });

    test('a box that must be ticked, boxes of one name, and a day', async ({ page }) => {
      await signIn(page, 'secretary');
      await page.goto(`${society}/office/plots`);
      await page.getByRole('link', { name: 'B1', exact: true }).first().click();
      const form = formWith(page, 'End it');
      const [sure, from] = [form.getByLabel('Yes, end it'), form.getByLabel('First day on which it no longer holds')];
      await from.fill('');
      await send(form, 'End it');
      await expectWrong(sure, /Tick the box to confirm/);
      await expectWrong(from, /Give a real day/);
      await expectLinked(form, /Tick the box to confirm/, sure);
      const holders = formWith(page, 'Set the holders');
      await holders
        .getByRole('checkbox')
        .evaluateAll((all) => all.forEach((one) => ((one as HTMLInputElement).checked = false)));
      await holders.getByLabel('From').fill('2027-02-03');
      await send(holders, 'Set the holders');
      const group = holders.getByRole('group', { name: 'Holders, with equal rights' });
      await expect(group).toHaveAccessibleDescription(/Choose one to twenty members/);
      await expectLinked(holders, /Choose one to twenty members/, group);
      await expect(holders.locator('.field-error')).toHaveCount(1);
      await expect(holders.getByLabel('From')).toHaveValue('2027-02-03');
    });

    test('a form that is folded away', async ({ page }) => {
      await signIn(page, 'member');
      await page.goto(`${society}/ground`);
      await page.locator(`a[href*="${society}/ground/beds/"]`).first().click();
      await page.getByText('Split it in two').click();
      const form = formWith(page, 'Split');
      await form.getByLabel('width', { exact: true }).check();
      await form.getByLabel('Distance from the top or left').fill('-3');
      await form.getByLabel('First part’s name').fill('left 🥕');
      await send(form, 'Split');
      const at = form.getByLabel('Distance from the top or left');
      await expectWrong(at, /That is not a length/);
      await expectLinked(form, /That is not a length/, at);
      await expect(at).toBeVisible();
      await expect(at).toHaveValue('-3');
      await expect(form.getByLabel('width', { exact: true })).toBeChecked();
      await expect(form.getByLabel('First part’s name')).toHaveValue('left 🥕');
    });

    test('a table with wrong lines', async ({ page }) => {
      await signIn(page, 'member');
      await page.goto(`${society}/ground`);
      await page.locator('a[href$="/seasons"]').first().click();
      const form = page.locator('form', { has: page.locator('textarea[name="table"]') });
      const table = form.locator('textarea[name="table"]');
      const typed = 'bed,crop,season\nnowhere,leek,2001\n\nnowhere,nothing,1899';
      await table.fill(typed);
      await form.getByRole('button', { name: 'Look at it' }).click();
      await expect(form.getByRole('alert')).toContainText('Line 4, column “season”');
      await expectWrong(table, /Line 2, column “bed”/);
      await expectLinked(form, /Line 4, column “season”/, table);
      await expect(table).toHaveValue(typed);
    });
  });
}
