import pg from 'pg';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

/** Let a question’s time come, past the guards that keep it: as if its days had gone by. */
async function letItClose(title: string): Promise<void> {
  const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
  await client.connect();
  try {
    await client.query('BEGIN');
    await client.query('SET LOCAL session_replication_role = replica');
    const back = `"openedAt" = "openedAt" - interval '9 days', "closesAt" = "closesAt" - interval '8 days'`;
    const { rowCount } = await client.query(`UPDATE "Ballot" SET ${back} WHERE "title" = $1`, [title]);
    expect(rowCount).toBe(1);
    await client.query('COMMIT');
  } finally {
    await client.end();
  }
}

test('a new manuring interval is put to a count of hands, carried, and followed from its day', async ({
  page,
  browser,
  baseURL,
}, { project }) => {
  test.slow();
  const title = `Shall it be every four years? Asked on a ${project.name} ${Date.now()}`;
  await signIn(page, 'chair');
  await page.goto('/withy-reach/board');
  await page.getByRole('link', { name: 'Decisions' }).click();
  await expectAccessible(page);
  await page.getByRole('link', { name: 'Put a question' }).click();
  await page.getByLabel('The question').fill(title);
  await page.getByLabel('What there is to say for it').fill('The heap is **small**.');
  await page.getByLabel('Closes').fill(`${inDays(7)}T20:00`);
  await page.getByLabel('Quorum', { exact: true }).fill('2');
  await page.getByLabel('Quorum counted in').selectOption('number');
  await page.getByLabel('Rule that changes if it is carried').selectOption('manuringIntervalYears');
  await page.getByLabel('New value').fill('4000');

  await test.step('a value out of bounds is refused beside its field, and nothing typed is lost', async () => {
    await page.getByRole('button', { name: 'Keep it as a draft' }).click();
    await expect(page.getByRole('alert').filter({ hasText: 'Please mend this first' })).toBeVisible();
    await expect(page.getByLabel('The question')).toHaveValue(title);
    await expect(page.getByLabel('Rule that changes if it is carried')).toHaveValue('manuringIntervalYears');
    await expectAccessible(page);
    await page.getByLabel('New value').fill('4');
  });
  await page.getByRole('button', { name: 'Keep it as a draft' }).click();
  await expect(page.getByText('A draft, which the committee alone reads.')).toBeVisible();
  await expectAccessible(page);
  const address = page.url();

  const context = await browser.newContext({ ...(baseURL ? { baseURL } : {}) });
  const member = await context.newPage();
  await signIn(member, 'member');
  await test.step('a member learns nothing of a draft', async () => {
    expect((await member.goto(address))?.status()).toBe(404);
  });

  await page.getByLabel('It says what we want to ask').check();
  await page.getByRole('button', { name: 'Open it' }).click();
  await expect(page.getByText(/^0 hands of \d+ raised/)).toBeVisible();
  await page.getByLabel('For', { exact: true }).check();
  await page.getByRole('button', { name: 'Raise it', exact: true }).click();
  await expect(page.getByText(/^1 hand of \d+ raised/)).toBeVisible();

  await test.step('a member is asked for a hand, and raises it for another thing after all', async () => {
    await member.goto('/withy-reach');
    await expect(member.getByText(`Raise your hand: “${title}”`)).toBeVisible();
    await member.goto(address);
    await expectAccessible(member);
    await expectNoSidewaysScroll(member);
    await member.getByLabel('Against').check();
    await member.getByRole('button', { name: 'Raise it', exact: true }).click();
    await expect(member.getByText('Raised for Against')).toBeVisible();
    await expect(member.getByText('Constance Hale')).toHaveCount(0);
    await member.getByLabel('For', { exact: true }).check();
    await member.getByRole('button', { name: 'Raise it for this instead' }).click();
    await expect(member.getByText('Raised for For')).toBeVisible();
    await expect(member.getByText(/^2 hands of \d+ raised/)).toBeVisible();
    await member.goto('/withy-reach');
    await expect(member.getByText(`Raise your hand: “${title}”`)).toHaveCount(0);
  });

  await letItClose(title);
  await test.step('after the close everybody sees who raised a hand for what, and the minutes have it', async () => {
    await member.goto(address);
    await expect(member.getByText(/^Decision \d+: carried/)).toBeVisible();
    await expect(member.getByRole('table').getByText('Constance Hale')).toBeVisible();
    await expect(member.getByRole('button', { name: /Raise it/ })).toHaveCount(0);
    await expectAccessible(member);
    await expectNoSidewaysScroll(member);
    await member.goto('/withy-reach/board/decisions/minutes');
    await expect(
      member.getByRole('heading', { name: new RegExp(`\\d+\\. ${title.replace('?', '\\?')}`) }),
    ).toBeVisible();
    await expectNoSidewaysScroll(member);
  });

  await test.step('the rule follows from its day, and says what carried it', async () => {
    await member.goto('/withy-reach/office/settings');
    // As it was put: from the day on which it would have closed, a week from now. Until then the old one holds.
    const row = member.getByRole('row', { name: /^Manuring interval/ });
    await expect(row.getByRole('cell').nth(1)).toHaveText('3 years');
    const set = member.getByRole('listitem').filter({ hasText: `Manuring interval: 4 years from ${inDays(7)}` });
    const carried = set.filter({ has: member.locator(`a[href="${new URL(address).pathname}"]`) });
    await expect(carried.getByRole('link', { name: /^carried by a count of hands on/ })).toBeVisible();
  });
  await context.close();
});
