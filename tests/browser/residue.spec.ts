import type { Page } from '@playwright/test';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const society = '/withy-reach';
const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();

/** Fill the lines of the pots of the reading that is open: plants up, of these distorted, sets of true leaves. */
async function readPots(page: Page, distorted: string): Promise<void> {
  for (const pot of ['manure 1', 'manure 2', 'manure 3', 'plain 1', 'plain 2', 'plain 3']) {
    const line = page.getByRole('group', { name: pot, exact: true });
    await line.getByLabel('Up').fill('3');
    await line.getByLabel('Distorted').fill(pot.startsWith('manure') ? distorted : '0');
    await line.getByLabel('Leaf sets').fill('2');
  }
}

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

// A delivery of its own for each screen, of a material that nobody else's test waits for; it is called off in the end.
test('a test shows symptoms: the heap is held, released, held again and called off', async ({ page }, info) => {
  const name = `Doubted load, ${info.project.name}`;
  await signIn(page, 'secretary');
  await page.goto(`${society}/office/deliveries/new`);
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Material').selectOption(info.project.name === 'phone' ? 'sheep-manure' : 'goat-manure');
  await page.getByLabel('Amount').fill('30');
  await page.getByLabel('in', { exact: true }).selectOption('loads');
  await page.getByLabel('Density').fill('500');
  await page.getByLabel('Comes on').fill(inDays(5).slice(0, 10));
  await page.getByLabel('Collect by').fill(inDays(9).slice(0, 10));
  await page.getByLabel('Booking closes').fill(inDays(4).slice(0, 16));
  await page.getByRole('button', { name: 'Plan it' }).click();
  await press(page, 'Open booking', /Booking is open/);
  const office = page.url().replace(/\?.*/, '');
  await page.getByRole('link', { name: 'Type paper bookings in' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Type paper bookings in');
  await page.getByRole('textbox').first().fill('2');
  await page.getByRole('button', { name: 'Enter them all' }).click();
  await expect(page.getByRole('status').first()).toContainText('1 bookings stand');

  // Two pots are too few; what was typed stays.
  await page.goto(office.replace('/office/', '/'));
  await page.getByRole('link', { name: 'Test it' }).click();
  await page.getByLabel('Which manure').fill('From the farm');
  await page.getByLabel('Pots with manure').fill('2');
  await page.getByLabel('Sown on').fill(inDays(-20).slice(0, 10));
  await page.getByRole('button', { name: 'Start the test' }).click();
  await expect(page.locator('.notice.short')).toContainText('whole number from 3 to 12');
  await expect(page.getByLabel('Which manure')).toHaveValue('From the farm');
  await looksRight(page);
  await page.getByLabel('Pots with manure').fill('3');
  await page.getByRole('button', { name: 'Start the test' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'From the farm' })).toBeVisible();
  await expect(page.getByText('that was due 13 days ago')).toBeVisible();
  await looksRight(page);

  await page.goto(society);
  const due = page.locator('.due li', { hasText: 'Read the pots of “From the farm”' });
  await expect(due).toContainText('13 days late');
  await due.getByRole('link', { name: 'Read them' }).click();
  await readPots(page, '4');
  await page.getByLabel('Read on').fill(inDays(-2).slice(0, 10));
  await page.getByRole('button', { name: 'Record the reading' }).click();
  await expect(page.locator('.notice.short')).toContainText('Only 3 are up in this pot');
  await expect(page.getByLabel('Distorted').first()).toHaveValue('4');
  await looksRight(page);
  await readPots(page, '2');
  await page.getByRole('button', { name: 'Record the reading' }).click();
  await expect(page.getByText('The reading is kept.')).toBeVisible();
  await expect(page.getByText('symptoms seen').first()).toBeVisible();
  await expect(page.getByRole('listitem').filter({ hasText: /^Salt, and manure that has not rotted/ })).toBeVisible();
  await expect(page.getByText('No test of a few pots proves manure clean.').first()).toBeVisible();
  await looksRight(page);

  await page.goto(society);
  await page.locator('.due li', { hasText: name }).getByRole('link', { name: 'Hold it' }).click();
  await press(page, 'Hold it', /nothing is shared out until you decide/);
  await looksRight(page);
  await page.getByText('Close it now').click();
  await press(page, 'Close booking now', /Booking is closed/);
  await page.getByLabel('Barrow-loads').fill('20');
  await press(page, 'That is the heap', /The heap is measured/);
  await expect(page.getByRole('button', { name: /^Share out/ })).toHaveCount(0);
  await page.getByRole('link', { name: 'As members see it' }).click();
  await expect(page.locator('.notice.short')).toContainText(/Held, from .*a residue test shows symptoms/);
  await looksRight(page);
  await page.goto(society);
  await expect(page.locator('.due li', { hasText: `“${name}” is held` })).toContainText(
    'a residue test shows symptoms',
  );

  await page.goto(office);
  await page.getByRole('button', { name: 'Release it' }).click();
  await expect(page.locator('.notice.short', { hasText: 'Give the reason' })).toBeVisible();
  await page.getByLabel('Reason', { exact: true }).fill('it was salt');
  await press(page, 'Release it', /can be shared out again/);
  await expect(page.getByRole('button', { name: 'Share out 20 loads' })).toBeVisible();
  await press(page, 'Hold it', /nothing is shared out until you decide/);
  await page.getByLabel('Yes, it does not come').check();
  await press(page, 'Call it off', /Called off/);
  await expect(page.locator('.notice.short')).toContainText('Was held');
});

for (const script of ['on', 'off'] as const) {
  test.describe(`with script ${script}`, () => {
    test.use({ javaScriptEnabled: script === 'on' });

    test('manure of one’s own is tested, corrected, ended and taken back', async ({ page }, info) => {
      const name = `Own manure, script ${script}, ${info.project.name}`;
      await signIn(page, 'member');
      await page.goto(`${society}/ground`);
      await page.getByRole('link', { name: 'Residue tests' }).click();
      await page.getByLabel('Which manure').fill(name);
      await page.getByLabel('Sown on').fill('');
      await page.getByRole('button', { name: 'Start the test' }).click();
      await expect(page.getByRole('heading', { name: 'Sow the pots' })).toBeVisible();
      await page.getByLabel('Sown on').fill(inDays(-12).slice(0, 10));
      await page.getByRole('button', { name: 'It was sown on that day' }).click();
      await expect(page.getByText('The day of sowing is kept.')).toBeVisible();
      await readPots(page, '3');
      await page.getByLabel('Read on').fill(inDays(-1).slice(0, 10));
      await page.getByRole('button', { name: 'Record the reading' }).click();
      await expect(page.getByText('symptoms seen').first()).toBeVisible();
      await page.getByText('Correct this reading').click();
      const form = page.locator('form', { has: page.getByRole('button', { name: 'Correct the reading' }) });
      for (const pot of ['manure 1', 'manure 2', 'manure 3'])
        await form.getByRole('group', { name: pot, exact: true }).getByLabel('Distorted').fill('0');
      for (const leaves of await form.getByLabel('Leaf sets').all()) await leaves.fill('3');
      await form.getByRole('button', { name: 'Correct the reading' }).click();
      await expect(page.getByText('no symptoms seen so far').first()).toBeVisible();
      await expect(page.getByText('It is no all-clear')).toBeVisible();
      if (script === 'on') await looksRight(page);
      await page.getByRole('button', { name: 'End the test' }).click();
      await expect(page.getByText('The test is ended.')).toBeVisible();
      await page.getByText('Take it back, if it was a mistake').click();
      await page.getByRole('button', { name: 'Take the test back' }).click();
      await expect(page.locator('.notice.short')).toContainText('Tick the box');
      await page.getByLabel('Yes, it was a mistake').check();
      await page.getByRole('button', { name: 'Take the test back' }).click();
      await expect(page.getByText('The test is taken back.')).toBeVisible();
      await expect(page.getByText(name)).toHaveCount(0);
    });
  });
}

// A step that was taken is said by the page.
async function press(page: Page, name: string, words: RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await expect(page.locator('.notice.kept', { hasText: words })).toBeVisible();
}
