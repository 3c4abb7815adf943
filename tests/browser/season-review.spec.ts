import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';

/** The pages of a printed paper. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

test('the chair prints the season on one page, and a version without names for the landlord', async ({ page }) => {
  await signIn(page, 'chair');
  await page.goto(`${society}/board`);
  await page.getByRole('link', { name: 'Season review' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Withy Reach: the season');
  await expect(page.getByText('records as they stood on')).toBeVisible();
  await expect(page.getByRole('img', { name: /the rotation was kept on \d+ % of the ground/ })).toBeVisible();
  await expect(page.getByRole('img', { name: /^Of \d+ holdings/ }).first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'By holding: had, of so many asked' }).first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Decided by a count of hands' })).toBeVisible();
  // The same in figures, for whoever can't see the drawing.
  await page.getByText('The same in figures').first().click();
  await expect(page.getByRole('region', { name: 'What of the ground kept its rotation, in figures' })).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.reload();
  expect(pagesOf(await page.pdf({ format: 'A4' }))).toBe(1);

  await page.getByRole('link', { name: 'For the landlord, without names' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('for the landlord');
  const paper = (await page.locator('main').innerText()).replace('Print on A4', '');
  // Neither a plot nor anybody of the society.
  expect(paper).not.toMatch(/\b[A-D]\d{1,2}\b/);
  for (const name of ['Apsley', 'Hale', 'Calloway', 'Longmire', 'Stable load']) expect(paper).not.toContain(name);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  expect(pagesOf(await page.pdf({ format: 'A4' }))).toBe(1);
});

test('a member reads the season, and not what others had', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto(`${society}/review`);
  await expect(page.getByRole('img', { name: /^Of \d+ holdings/ }).first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'By holding: had, of so many asked' })).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'For the landlord, without names' })).toHaveCount(0);
  expect((await page.request.get(`${society}/review/landlord`)).status()).toBe(404);
});
