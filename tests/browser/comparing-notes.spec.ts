import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

test('a newcomer asks why their onions were small, and sees three neighbours’ beds beside their own', async ({
  page,
}) => {
  await signIn(page, 'Bea Longmire');
  await test.step('the talk leads to what neighbours’ beds gave', async () => {
    await page.goto('/withy-reach/board/search?words=onions+small');
    await page.getByRole('link', { name: 'Why were my onions small?' }).first().click();
    // A neighbour's answer names the comparison, and how it stands now stands below the thread.
    await expect(page.getByText(/What beds gave: onion.*double dug or not/)).toBeVisible();
    await page.getByRole('link', { name: 'what neighbours’ beds gave' }).click();
    await expect(page.getByRole('heading', { name: 'Comparing notes', level: 1 })).toBeVisible();
  });

  await test.step('each group has three plots or more, and says what so few can’t prove', async () => {
    await page.getByLabel('By').selectOption({ label: 'double dug or not' });
    await page.getByRole('button', { name: 'Show' }).click();
    const drawing = page.getByRole('img', { name: /Double dug: \d+ plots/ });
    await expect(drawing).toBeVisible();
    const counts = [...((await drawing.getAttribute('aria-label')) ?? '').matchAll(/(\d+) plots?\b/g)];
    expect(counts.length).toBeGreaterThan(0);
    for (const [, count] of counts) expect(Number(count)).toBeGreaterThanOrEqual(3);
    await expect(page.getByText('need not be what made it more', { exact: false })).toBeVisible();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  });

  await test.step('their own bed is named to them, and nobody else’s plot', async () => {
    const own = page.getByRole('region', { name: 'Your own beds' });
    await expect(own.getByRole('row', { name: /plot C10/ }).first()).toBeVisible();
    const text = await page.locator('main').innerText();
    expect([...text.matchAll(/plot ([A-E]\d+)/g)].map(([, number]) => number).filter((one) => one !== 'C10')).toEqual(
      [],
    );
  });

  await test.step('they let their own be compared, and take it back', async () => {
    await page.goto('/withy-reach/board/results/sharing');
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await page.getByRole('button', { name: 'Let them be compared' }).click();
    await expect(page.getByText('What these beds gave is compared.')).toBeVisible();
    await page.getByRole('button', { name: 'Take it back' }).click();
    await expect(page.getByText('What these beds gave is compared with nothing.')).toBeVisible();
  });
});
