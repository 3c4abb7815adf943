import { createHash } from 'node:crypto';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

test('a trial is proposed, joined with two halves of a bed, left and called off', async ({ page }, { project }) => {
  const question = `Do leeks mind? Seen on a ${project.name} ${Date.now()}`;
  const season = Number(inDays(0).slice(0, 4)) + 1;
  await signIn(page, 'member');
  await page.goto('/withy-reach/board');
  await page.getByRole('link', { name: 'Trials', exact: true }).click();
  await page.getByRole('link', { name: 'Propose a trial' }).click();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByLabel('Question').fill(question);
  await page.getByLabel('Crop').selectOption({ label: 'Leek' });
  await page.getByLabel('Season').fill(String(season));
  await page.getByLabel('Treatment A').fill('Watered twice a week.');
  await page.getByLabel('Treatment B').fill('Watered when it is dry.');
  await page.getByLabel('Last day of joining').fill(inDays(20));
  await page.getByLabel('Last day of results').fill(inDays(10));

  await test.step('a refused form keeps what was typed', async () => {
    await page.getByRole('button', { name: 'Open it for joining' }).click();
    await expect(page.getByText('give a later day').first()).toBeVisible();
    await expect(page.getByLabel('Question')).toHaveValue(question);
    await page.getByLabel('Last day of results').fill(`${season}-11-30`);
    await page.getByRole('button', { name: 'Open it for joining' }).click();
  });
  await expect(page.getByRole('heading', { level: 1, name: question })).toBeVisible();
  await expect(page.getByText('published at opening')).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const trial = page.url();

  await test.step('joining is agreeing that both results are reported', async () => {
    await page.getByRole('link', { name: 'Join with two beds' }).click();
    const halves = page.getByLabel('First piece').locator('option', { hasText: 'first half' });
    const first = (await halves.last().getAttribute('value')) ?? '';
    await page.getByLabel('First piece').selectOption(first);
    await page.getByLabel('Second piece').selectOption(first.replace(':first', ':second'));
    await page.getByRole('button', { name: 'Join' }).click();
    await expect(page.getByText('could not be reported').first()).toBeVisible();
    await page.getByLabel('Both results are reported').check();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Join' }).click();
    await expect(page).toHaveURL(trial);
    await expect(page.getByText('to be drawn by the lot')).toHaveCount(2);
  });

  await test.step('the report is closed, and leaving is free', async () => {
    await page.goto(`${trial}/report`);
    await expect(page.getByText('There is no report')).toBeVisible();
    await page.goto(trial);
    await page.getByRole('button', { name: 'Leave the trial' }).click();
    await expect(page.getByText('to be drawn by the lot')).toHaveCount(0);
  });

  await test.step('it is called off with a reason that stays', async () => {
    await page.getByLabel('Reason').fill('Asked the wrong way round');
    await page.getByRole('button', { name: 'Call it off' }).click();
    await expect(page.getByText('Called off, because: “Asked the wrong way round”.')).toBeVisible();
  });
});

test('the lot is drawn again from what the page says', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach/board/trials');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: 'Do onions gain by manure the autumn before?' }).click();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const codes = await page.locator('dl.lot code').allInnerTexts();
  const [commitment = '', bytesHex = '', seed = ''] = codes;
  const text = (await page.getByRole('region', { name: 'The text' }).textContent()) ?? '';
  const sha = (data: Buffer | string) => createHash('sha256').update(data).digest('hex');
  const bytes = Buffer.from(bytesHex, 'hex');
  expect(sha(bytes)).toBe(commitment);
  expect(sha(Buffer.concat([bytes, Buffer.from(text, 'utf8')]))).toBe(seed);
  const byHand = text
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => line.split(':')[0] ?? '')
    .map((id) => ({ id, draw: sha(`${seed}:${id}`) }))
    .sort((a, b) => (a.draw < b.draw ? -1 : 1));
  expect(byHand.length).toBeGreaterThan(3);
  const rows = page.getByRole('region', { name: 'How the lot fell' }).locator('tbody tr');
  await expect(rows).toHaveCount(byHand.length);
  for (const [at, { id, draw }] of byHand.entries()) {
    const cells = await rows.nth(at).locator('td').allInnerTexts();
    const even = '02468ace'.includes(draw.slice(-1));
    expect(cells.slice(1)).toEqual([...(even ? ['A', 'B'] : ['B', 'A']), draw.slice(-1), id, draw]);
  }
});

test('the report says what the plots allow, and no more', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach/board/trials');
  await page.getByRole('link', { name: 'Do onions gain by manure the autumn before?' }).click();
  await page.getByRole('link', { name: 'The report' }).click();
  await expect(page.getByText('On 6 plots A gave')).toBeVisible();
  await expect(page.getByRole('img', { name: /^6 plots\. A gave/ })).toBeVisible();
  await expect(page.getByText('“The pigeons had one half of it”')).toBeVisible();
  await expect(page.getByRole('region', { name: /^Results by plot/ }).locator('tr.mine')).toHaveCount(1);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});

test('a laid-out trial asks its growers for what it wants', async ({ page }) => {
  await signIn(page, 'member');
  const due = page.getByText('“Do leeks under straw grow heavier?”: do A on bed');
  await expect(due).toBeVisible();
  await page.goto('/withy-reach/board/trials');
  await page.getByRole('link', { name: 'Do leeks under straw grow heavier?' }).click();
  await expect(page.getByRole('heading', { name: /^What A gave, on bed/ })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Both are done as laid out' })).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});
