import { onePixel } from '../fixtures/one-pixel';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

test('a talk about a bed’s trouble: asked, answered, found, and kept in order', async ({ page, browser, baseURL }, {
  project,
}) => {
  const title = `Small onions, seen on a ${project.name} ${Date.now()}`;
  await signIn(page, 'member');
  await page.getByRole('link', { name: 'Board' }).click();
  await expectAccessible(page);
  await page.getByRole('link', { name: 'Begin a talk' }).click();
  await page.getByLabel('Title').fill(title);
  await page.getByLabel('About').selectOption({ label: 'Onion' });
  const draft = 'They were **small**.\n\n- sown in March\n- not dug';
  await page.getByLabel('What you have to say').fill(draft);

  await test.step('a draft is there again when the page is lost', async () => {
    await page.reload();
    await expect(page.getByLabel('What you have to say')).toHaveValue(draft);
    await page.getByLabel('Title').fill(title);
    await page.getByLabel('About').selectOption({ label: 'Onion' });
  });
  await page.getByRole('button', { name: 'Post it' }).click();
  await expect(page.getByRole('heading', { name: title })).toBeVisible();
  await expect(page.locator('.post-body strong')).toHaveText('small');
  await expect(page.getByText('clear between two plantings').first()).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const thread = page.url();

  await test.step('what is posted is no draft any more', async () => {
    await page.goto('/withy-reach/board/new');
    await expect(page.getByLabel('What you have to say')).toHaveValue('');
  });

  await test.step('a picture is put to it', async () => {
    await page.goto(thread);
    await page.getByRole('link', { name: /^change/ }).click();
    await page
      .getByLabel('Picture')
      .setInputFiles({ name: 'bed.png', mimeType: 'image/png', buffer: Buffer.from(onePixel) });
    await page.getByLabel('What it shows').fill('A bed of onions');
    await page.getByRole('button', { name: 'Send it' }).click();
    await expect(page.getByRole('img', { name: 'A bed of onions' })).toBeVisible();
  });

  const context = await browser.newContext({ ...(baseURL ? { baseURL } : {}) });
  const chair = await context.newPage();
  await signIn(chair, 'secretary');
  await test.step('somebody answers, and the one who asked learns of it', async () => {
    await chair.goto('/withy-reach/board/search?words=small+onions');
    await chair.getByRole('link', { name: title }).first().click();
    await chair.getByLabel('What you have to say').fill('Mine are trenched.');
    await chair.getByRole('button', { name: 'Post it' }).click();
    await expect(chair.getByText('Mine are trenched.')).toBeVisible();
    await page.goto('/withy-reach');
    await expect(page.getByText(`A reply in “${title}”`)).toBeVisible();
    await page.goto(thread);
    await expect(page.getByText('Mine are trenched.')).toBeVisible();
    await expect(async () => {
      await page.goto('/withy-reach');
      await expect(page.getByText(`A reply in “${title}”`)).toHaveCount(0, { timeout: 500 });
    }).toPass();
  });

  await test.step('the committee hides a post with a reason; only it and the author read it', async () => {
    await chair.goto(thread);
    await chair
      .getByRole('link', { name: /^order/ })
      .first()
      .click();
    // The thread's own page has a reason to give too.
    await expect(chair.getByRole('heading', { level: 1, name: /^A post of/ })).toBeVisible();
    const form = chair.locator('form', { has: chair.getByRole('button', { name: 'Hide it' }) });
    await form.getByLabel('Reason').fill('To see how it goes');
    await form.getByRole('button', { name: 'Hide it' }).click();
    await expect(chair.getByText('Hidden by the committee, because: “To see how it goes”').first()).toBeVisible();
    await expectAccessible(chair);
    await chair.goto('/withy-reach/board/search?words=small+onions');
    await expect(chair.getByRole('link', { name: title })).toHaveCount(0);
    await page.goto(thread);
    await expect(page.getByText('To see how it goes')).toBeVisible();
  });
  await context.close();
});

test('a notice that must be read is read, and said to be', async ({ page }) => {
  await signIn(page, 'gate helper');
  await page.goto('/withy-reach');
  const due = page.getByText('“Annual meeting: bring your questions”');
  // The other width may have said so already.
  if (await due.isVisible()) {
    await page.getByRole('link', { name: 'Read it' }).first().click();
    await page.getByRole('button', { name: 'I have read it' }).click();
  } else await page.goto('/withy-reach/board');
  await page.getByRole('link', { name: 'Board' }).first().click();
  await page.getByRole('link', { name: 'Annual meeting: bring your questions' }).first().click();
  await expect(page.getByText('You have said that you read it.')).toBeVisible();
  await expectNoSidewaysScroll(page);
});
