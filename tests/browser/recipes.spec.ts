import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const recipes = '/withy-reach/ground/recipes';

const rowFor = (page: Page, group: string) => page.getByRole('row', { name: new RegExp(`^${group}`) });
const formWith = (page: Page, button: string) =>
  page.locator('form', { has: page.getByRole('button', { name: button, exact: true }) });

/** Send the form and wait until it says what came of it. */
async function keep(page: Page, button: string, role: 'status' | 'alert', words: RegExp): Promise<void> {
  const form = formWith(page, button);
  await form.getByRole('button', { name: button, exact: true }).click();
  await expect(form.getByRole(role)).toContainText(words);
}

test('an expert sets their own trench, meal and layout once, and every recipe follows', async ({ page }) => {
  await signIn(page, 'treasurer');
  await page.goto('/withy-reach/ground');
  await page.getByRole('link', { name: 'Recipes and habits' }).click();
  await expect(page.getByRole('heading', { name: 'Recipes and habits' })).toBeVisible();
  await expect(rowFor(page, 'Alliums')).toContainText('double digging, left firm and high');
  await expect(rowFor(page, 'Roots')).toContainText('15 October to 15 December');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);

  const habits = formWith(page, 'Keep my habits');
  await habits.getByLabel('Width of a trench').fill('18 in');
  await habits.getByLabel('Layout').selectOption('straight-through');
  await habits.getByLabel('Soil').selectOption('sandy');
  await keep(page, 'Keep my habits', 'status', /holds for all your ground/);
  await expect(habits.getByLabel('Width of a trench')).toHaveValue('46 cm');
  await expect(habits.getByLabel('Layout')).toHaveValue('straight-through');
  // Light soil is dug in spring, whichever group it is for.
  await expect(rowFor(page, 'Roots')).toContainText('15 February to 31 March');

  await page.getByRole('link', { name: 'Alliums' }).click();
  const form = formWith(page, 'Keep my recipe');
  await form.getByLabel('Meal', { exact: true }).selectOption('bone-meal');
  await form.getByLabel('Meal, how much').fill('4 oz');
  await form.getByLabel('Straw').fill('0');
  await keep(page, 'Keep my recipe', 'status', /all your beds of this group/);
  await expect(rowFor(page, 'Alliums')).toContainText('bone meal 136 g/m²');
  await expect(rowFor(page, 'Alliums')).toContainText('yours in 3');
  await expect(rowFor(page, 'Alliums')).not.toContainText('straw');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);

  // Whose it is, why, and where it comes from is one tap away.
  const meal = form.locator('.own-setting', { has: page.getByLabel('Meal', { exact: true }) });
  await meal.getByText('Yours. Put it back?').click();
  await expect(meal).toContainText('Source of the catalogue’s hoof and horn: common practice.');

  // What cannot be read stays as it was typed, and nothing is kept of the rest.
  await form.getByLabel('Manure', { exact: true }).fill('a barrowful');
  await form.getByLabel('Start on light soil').fill('1 April');
  await keep(page, 'Keep my recipe', 'alert', /Manure: give 0 kg\/m² to 20 kg\/m²/);
  await expect(form.getByLabel('Manure', { exact: true })).toHaveValue('a barrowful');
  await expect(form.getByLabel('Start on light soil')).toHaveValue('1 April');
  await form.getByLabel('Manure', { exact: true }).fill('6');
  await keep(page, 'Keep my recipe', 'alert', /finish comes before the start/);
  await expectAccessible(page);

  await page.goto(`${recipes}/alliums`);
  await page.getByRole('button', { name: 'Put the whole recipe back' }).click();
  await expect(page.getByText('nothing of your own yet')).toBeVisible();
  await expect(rowFor(page, 'Alliums')).toContainText('hoof and horn 70 g/m²');
  await page.goto(recipes);
  await habits.getByLabel('Width of a trench').fill('');
  await habits.getByLabel('Layout').selectOption('');
  await habits.getByLabel('Soil').selectOption('');
  await keep(page, 'Keep my habits', 'status', /holds for all your ground/);
  await expect(page.getByText('loamy soil, assumed until you say')).toBeVisible();
});

test('the secretary sets a recipe for the society from a day on, and puts it back', async ({ page }) => {
  await signIn(page, 'secretary');
  await page.goto('/withy-reach/office');
  await page.locator('a[href$="/office/recipes"]').click();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const later = `${new Date().getUTCFullYear() + 1}-03-01`;
  await page.getByLabel('As from').fill(later);
  await page.getByRole('button', { name: 'Show' }).click();
  await page.getByRole('link', { name: 'Leaves' }).click();
  await expect(page).toHaveURL(new RegExp(`leaves\\?on=${later}`));
  await formWith(page, 'Set it for the society').getByLabel('Method').selectOption('mulch');
  await keep(page, 'Set it for the society', 'status', /Whoever has set their own keeps it/);
  await expect(rowFor(page, 'Leaves')).toContainText('mulch on top, without digging');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  // Until that day nothing changes, and what is due is written down.
  await page.goto('/withy-reach/office/recipes');
  await expect(rowFor(page, 'Leaves').first()).toContainText('forking');
  await expect(page.getByRole('region', { name: 'What was set before' })).toContainText(later);
  await page.goto(`/withy-reach/office/recipes/leaves?on=${later}`);
  await formWith(page, 'Set it for the society').getByLabel('Method').selectOption('');
  await keep(page, 'Set it for the society', 'status', /Set/);
  await expect(rowFor(page, 'Leaves')).toContainText('forking');
  await page.goto('/withy-reach/office/recipes/leaves?on=2020-01-01');
  await expect(page.getByText('What held in the past stays as it was')).toBeVisible();
});

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  test('habits and a recipe are kept, refused and put back', async ({ page }) => {
    await signIn(page, 'chair');
    await page.goto(recipes);
    const habits = formWith(page, 'Keep my habits');
    await habits.getByLabel('Width of a trench').fill('3 m');
    await habits.getByLabel('Soil').selectOption('clayey');
    await keep(page, 'Keep my habits', 'alert', /Width of a trench: give 30 cm to 100 cm/);
    await expect(habits.getByLabel('Width of a trench')).toHaveValue('3 m');
    await expect(habits.getByLabel('Width of a trench')).toHaveAccessibleDescription(/give 30 cm to 100 cm/);
    await expect(habits.getByLabel('Soil')).toHaveValue('clayey');
    await habits.getByLabel('Width of a trench').fill('50');
    await keep(page, 'Keep my habits', 'status', /holds for all your ground/);
    await page.goto(recipes);
    await expect(page.getByText('clayey soil: dug in autumn')).toBeVisible();
    await expect(formWith(page, 'Keep my habits').getByLabel('Width of a trench')).toHaveValue('50 cm');

    await page.goto(`${recipes}/potatoes`);
    await formWith(page, 'Keep my recipe').getByLabel('Method').selectOption('double-digging');
    await keep(page, 'Keep my recipe', 'status', /Kept/);
    await page.goto(`${recipes}/potatoes`);
    await expect(rowFor(page, 'Potatoes')).toContainText('double digging');
    await page.getByRole('button', { name: 'Put the whole recipe back' }).click();
    await page.goto(`${recipes}/potatoes`);
    await expect(rowFor(page, 'Potatoes')).toContainText('single digging');
    await page.goto(recipes);
    await formWith(page, 'Keep my habits').getByLabel('Width of a trench').fill('');
    await formWith(page, 'Keep my habits').getByLabel('Soil').selectOption('');
    await keep(page, 'Keep my habits', 'status', /holds for all your ground/);
  });
});
