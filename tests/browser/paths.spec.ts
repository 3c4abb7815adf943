import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

const formWith = (page: Page, button: string) =>
  page.locator('form').filter({ has: page.getByRole('button', { name: button, exact: true }) });

async function retire(page: Page, name: string): Promise<void> {
  await page.goto(`${society}/office/paths`);
  await page.getByRole('link', { name, exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
  await looksRight(page);
  const form = formWith(page, 'Retire it');
  await form.getByRole('button').click();
  await expect(form.locator('.field-error')).toContainText('Tick the box to confirm');
  await form.getByLabel('Yes, retire it').check();
  await form.getByRole('button').click();
  await expect(page.getByRole('heading', { level: 1, name: 'Paths and drop points' })).toBeVisible();
  await expect(page.getByRole('link', { name, exact: true })).toHaveCount(0);
}

test('the secretary draws paths by typing and by tapping, and says where a lorry can drive', async ({ page }, info) => {
  const [typed, tapped] = [`Typed path, ${info.project.name}`, `Tapped path, ${info.project.name}`];
  await signIn(page, 'secretary');
  await page.goto(`${society}/office/paths`);
  await looksRight(page);
  const form = formWith(page, 'Draw it');
  await form.getByLabel('Name').fill(typed);
  await form.getByLabel('Its points').fill('-3, 108\n60, east');
  await form.getByRole('button', { name: 'Draw it' }).click();
  await expect(form.locator('.field-error')).toContainText('Line 2 is no point');
  await expect(form.getByLabel('Its points')).toHaveValue('-3, 108\n60, east');
  await form.getByLabel('Its points').fill('-3, 108\n60, 108');
  await form.getByLabel('Can a lorry').selectOption('part');
  await form.getByLabel('Part to').fill('64');
  await form.getByRole('button', { name: 'Draw it' }).click();
  await expect(form.locator('.field-error')).toContainText('The path is 63.00 m long');
  await looksRight(page);
  await form.getByLabel('Part to').fill('20');
  await form.getByRole('button', { name: 'Draw it' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Drawn.' })).toBeVisible();
  await expect(page.getByRole('row', { name: typed })).toContainText('0.00 m to 20.00 m');

  await page.goto(`${society}/office/paths`);
  await page.getByRole('button', { name: 'Draw the path on the plan' }).click();
  const sheet = page.getByRole('img', { name: 'Tap the plan to set points' });
  for (const x of [40, 120, 200]) await sheet.click({ position: { x, y: 30 } });
  await expect(page.getByText(/^3 points, /)).toBeVisible();
  await page.getByRole('button', { name: 'Take the last point back' }).click();
  const points = form.getByLabel('Its points');
  await expect(points).toHaveValue(/^-?\d+(\.\d)?, -?\d+(\.\d)?\n-?\d+(\.\d)?, -?\d+(\.\d)?$/);
  await form.getByLabel('Name').fill(tapped);
  await looksRight(page);
  await form.getByRole('button', { name: 'Draw it' }).click();
  await expect(page.getByRole('row', { name: tapped })).toContainText('no');
  await retire(page, typed);
  await retire(page, tapped);
});

test('the best place becomes a drop point, and the delivery is tipped there', async ({ page }, info) => {
  const name = `Found place, ${info.project.name}`;
  await signIn(page, 'secretary');
  await page.goto(`${society}/site`);
  await page.getByRole('link', { name: 'Where the heap walks least' }).click();
  await page.getByLabel('Where it may lie').selectOption('anywhere');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page).toHaveURL(/allowed=anywhere/);
  await expect(page.getByRole('region', { name: 'Drop points compared' })).toContainText(/loaded metres more, \d+ %/);
  await page.getByText('Why is there no better place?').click();
  await expect(page.getByText(/Every node of the path network where it may lie was worked out: \d+/)).toBeVisible();
  await expect(page.getByText('Keep the gate and the way for fire engine')).toBeVisible();
  await looksRight(page);
  await page
    .getByRole('region', { name: 'Drop points compared' })
    .getByRole('link', { name: 'Inside the gate' })
    .click();
  await expect(page.getByRole('heading', { name: 'By plot, from Inside the gate' })).toBeVisible();

  const make = formWith(page, 'Make this a drop point');
  await make.getByLabel('Name of the place').fill('water TANK');
  await make.getByRole('button').click();
  await expect(make.locator('.field-error')).toContainText('There is a drop point called water TANK already');
  await make.getByLabel('Name of the place').fill(name);
  await make.getByRole('checkbox').check();
  await make.getByRole('button').click();
  await expect(page.getByRole('status')).toContainText(
    'It is a drop point now, and the delivery is to be tipped there.',
  );
  await expect(page.getByRole('heading', { name: `Best: ${name}` })).toBeVisible();
  await expect(page.getByRole('row', { name })).toContainText('to be tipped here');
  await page.goto(`${society}/deliveries`);
  await page
    .getByRole('link', { name: /Stable load of \d/ })
    .first()
    .click();
  await expect(page.getByText(`${name}, on the hard standing`)).toBeVisible();
  await page.getByRole('link', { name: 'How far the loads are wheeled' }).click();

  // It is not retired under a load that is to come; once that goes elsewhere, it is.
  await page.goto(`${society}/office/paths`);
  await page.getByRole('link', { name, exact: true }).click();
  const away = formWith(page, 'Retire it');
  await away.getByLabel('Yes, retire it').check();
  await away.getByRole('button').click();
  await expect(away.locator('.field-error')).toContainText('A load is still to be tipped there');
  await page.goto(`${society}/site/heap`);
  await page.getByLabel(/^Where “Stable load/).selectOption('Water tank');
  await page.getByRole('button', { name: 'Tip it there' }).click();
  await expect(page.getByRole('status')).toContainText('The delivery is to be tipped there.');
  await retire(page, name);
});

test('a member sees how far their own loads are wheeled, and not who else asks for how many', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto(`${society}/site/heap`);
  await expect(page.getByText(/From there (it is|you wheel)/)).toBeVisible();
  await expect(page.getByText('How many loads go to other plots is shown once the lot is out')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Tip it there' })).toHaveCount(0);
  await looksRight(page);
});

test('a site without paths falls back to straight lines, and says so', async ({ page }) => {
  await signIn(page, 'chair');
  await page.goto('/little-hay/site/heap');
  await expect(page.getByText('No paths are drawn: the ways are straight lines')).toBeVisible();
  await looksRight(page);
  await page.goto('/little-hay/office/paths');
  await expect(page.getByText('None is drawn yet.')).toBeVisible();
  await looksRight(page);
});

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  test('a drop point is made and retired by typing alone', async ({ page }, info) => {
    const name = `Plain point, ${info.project.name}`;
    await signIn(page, 'secretary');
    await page.goto(`${society}/office/paths`);
    const form = formWith(page, 'Make it');
    await form.getByLabel('Name').fill(name);
    await form.getByLabel('East').fill('12');
    await form.getByLabel('South').fill('there');
    await form.getByRole('button').click();
    await expect(form.locator('.field-error')).toContainText('Give the distance from the site’s corner');
    await expect(form.getByLabel('East')).toHaveValue('12');
    await form.getByLabel('South').fill('27.5');
    await form.getByRole('button').click();
    await page.getByRole('link', { name, exact: true }).click();
    const away = formWith(page, 'Retire it');
    await away.getByLabel('Yes, retire it').check();
    await away.getByRole('button').click();
    await expect(page.getByRole('link', { name, exact: true })).toHaveCount(0);
  });
});
