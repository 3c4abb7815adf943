import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const anybody = ['/', '/sign-in', '/forgot', '/help'];
const member = ['', '/ground', '/ground/course', '/site', '/site/print', '/deliveries', '/deliveries/credits', '/me'];
const office = [
  '',
  '/plots',
  '/members',
  '/deliveries',
  '/deliveries/new',
  '/settings',
  '/crops',
  '/book',
  '/troubles',
  '/rotation',
  '/rotation/print',
];

for (const address of anybody) {
  test(`anybody sees ${address}`, async ({ page }) => {
    const reply = await page.goto(address);
    expect(reply?.status()).toBe(200);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  });
}

test('a member sees the pages of a member', async ({ page }) => {
  await signIn(page, 'member');
  for (const address of member) {
    await test.step(address, async () => {
      const reply = await page.goto(`/withy-reach${address}`);
      expect(reply?.status()).toBe(200);
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
    });
  }
});

test('the secretary sees the pages of the office', async ({ page }) => {
  await signIn(page, 'secretary');
  for (const address of office) {
    await test.step(address, async () => {
      const reply = await page.goto(`/withy-reach/office${address}`);
      expect(reply?.status()).toBe(200);
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
    });
  }
});

test('whoever is not signed in sees nothing of a society', async ({ page }) => {
  await page.goto('/withy-reach/ground');
  await expect(page).toHaveURL(/sign-in/);
});
