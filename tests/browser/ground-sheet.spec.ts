import type { Page } from '@playwright/test';
import pg from 'pg';
import { inviteNewcomer, phoneOf } from './newcomer';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const password = 'a long enough one';

// A beginner, their phone propped on the barrow, with what they are told at every turn.
test('a beginner double-digs one bed over three mornings, never wondering what comes next', async ({
  page,
  browser,
}, info) => {
  test.setTimeout(240_000);
  const name = `Digger ${info.project.name}`;
  const email = `digger.${info.project.name}@example.org`;
  const link = await inviteNewcomer(page, name, `G-${info.project.name}`);

  const evening = await phoneOf(browser);
  const phone = await evening.newPage();
  await phone.goto(link);
  await phone.getByLabel('E-mail address').fill(email);
  await phone.getByLabel('Password').fill(password);
  await phone.getByRole('button', { name: /^Join/ }).click();
  await phone.getByRole('link', { name: 'Draw beds' }).click();
  await phone.getByLabel('Name').fill('Onions');
  await phone.getByLabel('Width').fill('1.2 m');
  await phone.getByLabel('Length').fill('3.6 m');
  await phone.getByRole('button', { name: 'Draw', exact: true }).click();
  await expect(phone.getByRole('status').first()).toContainText('drawn');

  await phone.goto('/withy-reach/ground/recipes');
  await phone.getByLabel('Your age').selectOption('under-60');
  await phone.getByLabel('Pace').selectOption('steady');
  await phone.getByLabel('A session').fill('90');
  await phone.getByRole('button', { name: 'Keep my habits' }).click();
  await expect(phone.locator('form', { hasText: 'Keep my habits' }).getByRole('status')).toBeVisible();

  await test.step('the evening before: what it would want, and the rate that keeps the guidance', async () => {
    await phone.goto('/withy-reach/ground');
    await phone.getByRole('link', { name: 'Onions', exact: true }).click();
    await phone.getByRole('link', { name: 'Make a ground sheet' }).click();
    await phone.getByLabel('For', { exact: true }).selectOption('alliums');
    await phone.getByRole('button', { name: 'Work it out' }).click();
    await expect(phone.getByRole('heading', { name: /^Double digging for alliums/ })).toBeVisible();
    await expect(phone.getByRole('heading', { name: '6 trenches, 1.20 m × 60 cm' })).toBeVisible();
    await expect(phone.getByRole('heading', { name: '1 load of rotted horse manure' })).toBeVisible();
    await expect(phone.getByText('1.4 times the guidance')).toBeVisible();
    await expect(phone.getByText('It sets no need and no rate here')).toBeVisible();
    await expectAccessible(phone);
    await expectNoSidewaysScroll(phone);
    await phone.getByRole('link', { name: /^Take 3 kg/ }).click();
    await expect(phone.getByText('once the guidance')).toBeVisible();
    await phone.getByRole('button', { name: 'Make the sheet' }).click();
    await expect(phone.getByRole('heading', { name: 'Trench 1 of 6' })).toBeVisible();
  });
  const address = new URL(phone.url()).pathname;

  await test.step('the first morning: two trenches, one of them ticked too soon', async () => {
    await expect(phone.getByText('Today: trenches 1 and 2.')).toBeVisible();
    await expectSteps(phone, [
      'Mark it out',
      'Throw out the top spit',
      'Fork the bottom over',
      'Turn trench 2 over on to it',
    ]);
    await expect(phone.getByText(/^Fetch the first barrow: \d+ L left in it/)).toBeVisible();
    await expectAccessible(phone);
    await expectNoSidewaysScroll(phone);
    await tick(phone, 1, 6);
    await phone.getByRole('button', { name: 'Undo trench 1' }).click();
    await expect(phone.getByRole('heading', { name: 'Trench 1 of 6' })).toBeVisible();
    await expect(phone.getByRole('status')).toContainText('Taken back');
    await tick(phone, 1, 6);
    await expectSteps(phone, ['Fork the bottom over', 'Turn trench 3 over on to it']);
    // A double tap of a gloved thumb is one trench.
    await phone.getByRole('button', { name: 'Trench 2 done' }).dblclick();
    await expect(phone.getByRole('heading', { name: 'Trench 3 of 6' })).toBeVisible();
    await expect(phone.getByText('That is today’s portion done')).toBeVisible();
    await expectAccessible(phone);
  });
  await evening.close();
  await nightPasses(address);

  await test.step('the second morning: it remembers where they stopped', async () => {
    const second = await phoneOf(browser);
    const again = await second.newPage();
    await signInAs(again, email);
    await expect(again.getByText('Double digging: 4 trenches left of 6 on bed Onions')).toBeVisible();
    await again.getByRole('link', { name: 'Go on digging' }).click();
    await expect(again.getByRole('heading', { name: 'Trench 3 of 6' })).toBeVisible();
    await expect(again.getByText('Today: trenches 3 and 4.')).toBeVisible();
    await tick(again, 3, 6);
    await tick(again, 4, 6);
    await expect(again.getByRole('row', { name: /rotted horse manure/ })).toContainText('L');
    await second.close();
  });
  await nightPasses(address);

  await test.step('the third morning, without script: the last two, and what is left to do', async () => {
    const third = await phoneOf(browser, { javaScriptEnabled: false });
    const plain = await third.newPage();
    await signInAs(plain, email);
    await plain.goto(address);
    await expect(plain.getByText('Today: trenches 5 and 6.')).toBeVisible();
    await tick(plain, 5, 6);
    await expectSteps(plain, ['Fork the bottom over', 'Fill it with the soil of trench 1']);
    await plain.getByRole('button', { name: 'Trench 6 done' }).click();
    await expect(plain.getByRole('heading', { name: 'All 6 trenches are done' })).toBeVisible();
    await expectSteps(plain, ['Leave it high and rough', 'In spring']);
    await expectNoSidewaysScroll(plain);
    await plain.getByRole('link', { name: 'To the bed' }).click();
    await expect(plain.getByRole('heading', { name: 'Turn for manure' })).toBeVisible();
    await expect(plain.getByText(/not yet: manured for/)).toBeVisible();
    await expect(plain.getByText('all done')).toBeVisible();
    await third.close();
  });
});

test('a sheet that cannot be dug is refused beside its field, with what was typed, script off', async ({ browser }) => {
  const context = await phoneOf(browser, { javaScriptEnabled: false });
  const page = await context.newPage();
  await signIn(page, 'secretary');
  await page.goto('/withy-reach/ground');
  const bed = await page.locator('a[href*="/ground/beds/"]').first().getAttribute('href');
  await page.goto(`${bed}/sheet?group=alliums`);
  await page.getByText('Your own way on this sheet').click();
  await page.getByLabel('Manure', { exact: true }).fill('lots');
  await page.getByLabel('Over a length of').fill('-2 m');
  await page.getByLabel('Depth of a spit').fill('0');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByLabel('Over a length of')).toHaveValue('-2 m');
  await expect(page.getByLabel('Over a length of')).toHaveAccessibleDescription(/That is not a length/);
  await page.getByLabel('Over a length of').fill('');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByLabel('Manure', { exact: true })).toHaveValue('lots');
  await expect(page.getByLabel('Manure', { exact: true })).toHaveAccessibleDescription(/give 0 kg\/m² to 20 kg\/m²/);
  await expect(page.getByLabel('Depth of a spit')).toHaveValue('0');
  await expect(page.getByLabel('Depth of a spit')).toHaveAccessibleDescription(/give 10 cm to 40 cm/);
  await page.getByLabel('Manure', { exact: true }).fill('4 kg');
  await page.getByLabel('Depth of a spit').fill('');
  await page.getByLabel('Over a length of').fill('50 cm');
  await page.getByLabel('Trenches run along').selectOption('width');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByLabel('Over a length of')).toHaveAccessibleDescription(/narrower trench, a longer strip/);
  await expect(page.getByText('NaN')).toHaveCount(0);
  await context.close();
});

test('somebody’s half-dug bed is gone on with by whoever shares it, and prints on two pages', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach');
  await page.getByRole('link', { name: 'Go on digging' }).first().click();
  await expect(page.getByText(/^Last: (trench|strip) \d+, ticked by Ruben Calloway/)).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: 'Print on two pages' }).click();
  await expect(page.getByRole('button', { name: 'Print on two pages of A4' })).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  expect(await pagesOf(page)).toBe(2);
});

/** Tick the trench in hand with the one button, and see the next come up. */
async function tick(page: Page, trench: number, of: number): Promise<void> {
  await page.getByRole('button', { name: `Trench ${trench} done` }).click();
  await expect(page.getByRole('heading', { name: `Trench ${trench + 1} of ${of}` })).toBeVisible();
  await expect(page.getByRole('status')).toContainText(`Trench ${trench} is ticked`);
}

async function expectSteps(page: Page, titles: readonly string[]): Promise<void> {
  await expect(page.locator('.steps h3')).toHaveText([...titles]);
}

async function signInAs(page: Page, email: string): Promise<void> {
  await page.goto('/sign-in');
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/sign-in'));
}

/** What was dug today was dug yesterday: the service's clock is nobody's to move. */
async function nightPasses(address: string): Promise<void> {
  const sheetId = address.split('/').at(-1);
  const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
  await client.connect();
  for (const table of ['TrenchTick', 'GroundWork'])
    await client.query(`UPDATE "${table}" SET "doneOn" = "doneOn" - 1 WHERE "sheetId" = $1`, [sheetId]);
  await client.end();
}

/** The pages that a page prints on: the file names each of them. */
async function pagesOf(page: Page): Promise<number> {
  const file = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  return [...file.matchAll(/\/Type\s*\/Page[^s]/g)].length;
}
