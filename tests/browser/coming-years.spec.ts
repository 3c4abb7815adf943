import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

test('a holder plans the coming years: wishes that clash, one given up, printed, changed by hand, taken on', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await signIn(page, 'treasurer');
  await page.goto('/withy-reach/ground/course');
  await expectNoSidewaysScroll(page);
  // More alliums than can come back: the same bed two seasons running.
  await page.getByText('Fix or prefer something on a bed').click();
  const first = page.getByRole('row', { name: /B2, 1/ }).getByRole('combobox');
  await first.nth(0).selectOption('must:cucurbits');
  await first.nth(1).selectOption('must:cucurbits');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByRole('heading', { name: 'How good it is' })).toBeVisible({ timeout: 120_000 });
  const verdict = page.locator('section', { has: page.getByRole('heading', { name: 'How good it is' }) });
  await expect(verdict).toContainText(/cannot (all )?be met/);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);

  await verdict.getByRole('link', { name: 'ask without it' }).last().click();
  await page.waitForURL(/without=/);
  await page.getByRole('button', { name: 'Work it out' }).click();
  await page.waitForURL(/course\/[0-9a-f-]{36}$/);
  await expect(page.getByRole('heading', { name: 'How good it is' })).toBeVisible({ timeout: 120_000 });
  await expect(page.getByText(/Proven best/)).toBeVisible();

  await page.getByRole('link', { name: 'To print' }).click();
  await expect(page.getByRole('heading', { name: /the course, / })).toBeVisible();
  await expect(page.getByRole('table', { name: 'The course' })).toContainText('loads');
  await page.goBack();

  const second = page.getByRole('row', { name: /B2, 2/ }).getByRole('combobox').nth(1);
  const was = await page.getByRole('row', { name: /B2, 2/ }).getByRole('combobox').nth(0).inputValue();
  await second.selectOption(was);
  await page.getByRole('button', { name: 'Judge it as changed' }).click();
  await expect(page.getByText('Changed by hand')).toBeVisible();
  await page.getByRole('button', { name: 'Put it on the board' }).click();
  await expect(page.getByText(/entries stand on the board now/)).toBeVisible();
});

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  test('a course is asked for, looked at again until it is there, and put on the board', async ({ page }) => {
    test.setTimeout(180_000);
    await signIn(page, 'member');
    await page.goto('/withy-reach/ground/course');
    await page.getByLabel('How many').selectOption('2');
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.waitForURL(/course\/[0-9a-f-]{36}$/);
    const done = page.getByRole('heading', { name: 'How good it is' });
    await expect(async () => {
      const again = page.getByRole('link', { name: 'Look again' });
      if (await again.isVisible()) await again.click();
      await expect(done).toBeVisible({ timeout: 1000 });
    }).toPass({ timeout: 120_000 });
    await page.getByRole('button', { name: 'Put it on the board' }).click();
    await expect(page.getByText(/(entries stand|entry stands) on the board now/)).toBeVisible();
  });

  test('one that is being worked out is cancelled, and what was asked is kept', async ({ page }) => {
    await signIn(page, 'secretary');
    await page.goto('/withy-reach/ground/course');
    // Long enough to be caught at it.
    await page.getByLabel('How many').selectOption('6');
    await page.getByLabel('Even out the turns for manure').check();
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByRole('button', { name: 'Cancel it' }).click();
    await expect(page.getByText('It was cancelled.')).toBeVisible();
    await page.getByRole('link', { name: 'Ask again' }).click();
    await expect(page.getByLabel('How many')).toHaveValue('6');
    await expect(page.getByLabel('Even out the turns for manure')).toBeChecked();
  });
});

test('moving one on needs no wishes', async ({ page }) => {
  await signIn(page, 'chair');
  await page.goto('/withy-reach/ground/course');
  await page.getByRole('button', { name: 'Move one on' }).click();
  await expect(page.getByRole('heading', { name: /Moved one on/ })).toBeVisible();
  await expectAccessible(page);
});

test('a holder finds clubroot in a corner, and learns what it means there, for how long, and what not to carry out', async ({
  page,
}) => {
  await signIn(page, 'gate helper');
  await page.goto('/withy-reach/ground');
  await page
    .getByRole('link', { name: /Plot B8, bed 1/ })
    .first()
    .click();
  const sheet = page.locator('section', { has: page.getByRole('heading', { name: 'Troubles found in this ground' }) });
  await sheet.getByText('Record a trouble').click();
  await sheet.getByLabel('What was found').selectOption('clubroot');
  await sheet.getByLabel('From the top end').fill('0 m');
  await sheet.getByLabel('Over a length of').fill('0.6 m');
  await sheet.getByRole('button', { name: 'Record it' }).click();
  await expect(sheet).toContainText('7 clear years');
  await expect(sheet).toContainText('That is no all-clear');
  await expect(sheet).toContainText('clean boots');
  await expectAccessible(page);
  const next = page.locator('section', { has: page.getByRole('heading', { name: /Could stand here in/ }) });
  await expect(next).toContainText('Clubroot was found on');
});

test('the committee asks who would fall short if alliums had to wait a year longer', async ({ page }) => {
  await signIn(page, 'chair');
  await page.goto('/withy-reach/office/rotation');
  await page.getByRole('button', { name: 'Try it' }).click();
  await expect(page.getByRole('status')).toContainText('4 clear years in place of 3');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: /CSV/ }).click()]);
  expect(file.suggestedFilename()).toMatch(/^rotation-\d{4}\.csv$/);
});
