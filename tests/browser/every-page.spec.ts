import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const anybody = ['/', '/sign-in', '/forgot', '/help'];
const member = [
  '',
  '/ground',
  '/ground/course',
  '/ground/recipes',
  '/ground/recipes/brassicas',
  '/ground/residue',
  '/dates',
  '/dates/crops',
  '/dates/crops?group=all&soil=7',
  '/ground/harvests',
  '/ground/harvests/yields',
  '/measures?what=heap&shape=trailer',
  '/measures?what=bales',
  '/measures?what=bucket',
  '/measures?what=barrow',
  '/measures?what=jar',
  '/measures?what=units',
  '/site',
  '/site/print',
  '/site/heap',
  '/deliveries',
  '/deliveries/credits',
  '/money',
  '/seed',
  '/seed/tin',
  '/seed/orders',
  '/me',
  '/me/reminders',
  '/board',
  '/board/new',
  '/board/search?words=onions',
  '/board/rules',
  '/board/trials',
  '/board/trials/new',
  '/board/results?crop=onion',
  '/board/results?crop=onion&by=season',
  '/board/results?crop=pea&by=sowing',
  '/board/results/sharing',
  '/board/decisions',
  '/board/decisions/minutes',
  '/review',
  '/store',
  '/store/places',
  '/store/round',
  '/store/lots/new',
  '/store/lasts',
  '/store/kinds/onion',
];
const office = [
  '',
  '/need',
  '/order',
  '/suppliers',
  '/plots',
  '/paths',
  '/members',
  '/money',
  '/money/enter',
  '/money/ledger',
  '/money/deliveries',
  '/money/accounts',
  '/deliveries',
  '/deliveries/new',
  '/seed',
  '/settings',
  '/recipes',
  '/recipes/alliums',
  '/crops',
  '/book',
  '/troubles',
  '/rotation',
  '/rotation/print',
  '/export',
  '/../board/notice',
  '/../board/reports',
  '/../board/decisions/new',
  '/../deliveries/season',
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

test('a holder sees the pages of a bed’s ground sheet', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach/ground');
  const hrefOf = (part: string) => page.locator(`a[href*="${part}"]`).first().getAttribute('href');
  const [bed, sheet] = [await hrefOf('/ground/beds/'), await hrefOf('/ground/sheets/')];
  for (const address of [`${bed}/sheet`, `${bed}/sheet?group=alliums`, sheet ?? '', `${sheet}/print`]) {
    await test.step(address, async () => {
      const reply = await page.goto(address);
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
