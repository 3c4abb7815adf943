import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

/** A member opens the queue of the delivery of the summer, which is settled. */
async function openQueue(page: Page): Promise<void> {
  await signIn(page, 'member');
  await page.goto('/withy-reach/deliveries');
  await page.getByRole('link', { name: 'Stable load of the summer' }).click();
  await page.getByRole('link', { name: 'The whole queue' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Share-out: Stable load of the summer');
}

/** Every line of the shares: the plot, and the loads it was given. */
function sharesOn(page: Page): Promise<{ plot: string; share: number }[]> {
  const rows = page.getByRole('region', { name: 'Shares', exact: true }).locator('tbody tr');
  return rows.evaluateAll((lines) =>
    lines.map((line) => {
      const cells = [...line.querySelectorAll('td')].map((cell) => cell.textContent?.trim() ?? '');
      return { plot: cells[0] ?? '', share: Number(cells[4]) };
    }),
  );
}

test('a member counts with a pencil, works it out again, and reads of no difference', async ({ page }) => {
  await openQueue(page);
  const shares = await sharesOn(page);
  expect(shares.length).toBeGreaterThan(10);
  const places = await page.locator('.queue-places span').allTextContents();
  expect(places).toHaveLength(96);
  for (const { plot, share } of shares)
    expect(
      places.filter((one) => one === plot),
      plot,
    ).toHaveLength(share);

  await page.getByRole('button', { name: 'Work it out again' }).press('Enter');
  await expect(page.getByRole('status')).toHaveText(
    `Your browser reaches the same: ${shares.length} shares, no difference; the 32 bytes match the hash published before booking.`,
  );
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);

  const file = await page.getByRole('link', { name: 'Its figures, as JSON' }).getAttribute('href');
  const figures = await (await page.request.get(file ?? '')).json();
  expect(figures.shown).toHaveLength(shares.length);
  expect(figures.inputs.loads).toBe(96);
});

test('a figure changed on its way is named', async ({ page }) => {
  await openQueue(page);
  const address = page.url();
  const [first] = await sharesOn(page);
  let changed = 0;
  await page.route(address, async (route) => {
    const reply = await route.fetch();
    // The figures that the page was drawn from, in the first line that is compared: one load more.
    const shown = /(\\"shown\\":\[\{\\"id\\":\\"[0-9a-f-]+\\",\\"share\\":)(\d+)/;
    const body = (await reply.text()).replace(shown, (_, before: string, share: string) => {
      changed++;
      return `${before}${Number(share) + 1}`;
    });
    await route.fulfill({ response: reply, body });
  });
  await page.goto(address);
  expect(changed).toBe(1);
  await page.getByRole('button', { name: 'Work it out again' }).click();
  const status = page.getByRole('status');
  await expect(status).toContainText('Your browser reaches something else (1 difference');
  await expect(status).toContainText(
    `${first?.plot}: the page shows a share of ${(first?.share ?? 0) + 1}, your browser reaches ${first?.share}.`,
  );
  await expectAccessible(page);
});

test('without script the page says how to do it by hand', async ({ browser, page }) => {
  await openQueue(page);
  const context = await browser.newContext({
    javaScriptEnabled: false,
    storageState: await page.context().storageState(),
  });
  const plain = await context.newPage();
  await plain.goto(page.url());
  await expect(plain.getByText('By hand: print this page')).toBeVisible();
  await expect(plain.getByText('with script on. Without it, count.')).toBeVisible();
  await expect(plain.getByRole('button', { name: 'Work it out again' })).toHaveCount(0);
  await context.close();
});
