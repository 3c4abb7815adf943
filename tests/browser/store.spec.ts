import type { Page } from '@playwright/test';
import { inviteNewcomer, phoneOf } from './newcomer';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

const store = '/withy-reach/store';
const ago = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10);

async function looksRight(page: Page): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

async function join(page: Page, link: string, email: string): Promise<void> {
  await page.goto(link);
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password').fill('a long enough one');
  await page.getByRole('button', { name: /^Join/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('doing');
}

async function addPlace(page: Page, name: string, kind: string, cold: string): Promise<void> {
  await page.goto(`${store}/places`);
  const form = page.locator('form', { has: page.getByRole('button', { name: 'Add it' }) });
  await form.getByLabel('What you call it').fill(name);
  await form.getByLabel('What it is').selectOption(kind);
  await form.getByLabel('How cold it gets').fill(cold);
  await form.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByRole('heading', { name, exact: true })).toBeVisible();
}

type Lot = { kind: string; amount: string; measure?: 'pieces' | 'grams'; place: string; days: number; state?: string };

async function putIn(
  page: Page,
  { kind, amount, measure = 'pieces', place, days, state = 'sound' }: Lot,
): Promise<void> {
  await page.goto(`${store}/lots/new`);
  await page.getByLabel('Where', { exact: true }).selectOption({ label: place });
  await page.getByLabel('What it is').selectOption({ label: kind });
  await page.getByLabel('How much').fill(amount);
  await page.getByLabel('Counted or weighed').selectOption(measure);
  await page.getByLabel('Put in on').fill(ago(days));
  await page.getByLabel('In what state').selectOption(state);
  await page.getByRole('button', { name: 'Put it in store' }).click();
  await expect(page.getByRole('status').first()).toContainText('It is in store');
}

// Somebody new, with a store of their own: the first evening after lifting, and the first round.
test('a store is filled, six lots are gone over with one thumb, and the onions asked after', async ({
  page,
  browser,
}, info) => {
  const project = info.project.name;
  const link = await inviteNewcomer(page, `Keeper ${project}`, `K-${project}`);
  const own = await phoneOf(browser);
  const phone = await own.newPage();
  await join(phone, link, `keeper.${project}@example.org`);
  await phone.goto(store);
  await expect(phone.getByText('Say first where you keep things')).toBeVisible();
  await looksRight(phone);
  await phone.getByRole('link', { name: 'Places' }).click();
  await looksRight(phone);
  await addPlace(phone, 'The shed', 'shed', '3');
  await addPlace(phone, 'Spare room', 'room', '12');

  // What cannot be is said beside its field, and what was typed stays.
  await phone.getByRole('link', { name: 'Put a lot in' }).click();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('Put a lot in');
  await phone.getByLabel('What it is').selectOption('onion');
  await phone.getByLabel('How much').fill('a sackful');
  await phone.getByRole('button', { name: 'Put it in store' }).click();
  await expect(phone.locator('.field-error')).toContainText('as a whole number from 1');
  await expect(phone.getByLabel('How much')).toHaveValue('a sackful');
  await looksRight(phone);
  const [shed, room] = ['The shed (shed)', 'Spare room (room)'];
  await putIn(phone, { kind: 'Onions', amount: '80', place: shed, days: 14 });
  await putIn(phone, { kind: 'Shallots', amount: '120', place: shed, days: 30 });
  await putIn(phone, { kind: 'Garlic', amount: '40', place: shed, days: 31 });
  await putIn(phone, { kind: 'Potatoes', amount: '25', measure: 'grams', place: shed, days: 33 });
  await putIn(phone, { kind: 'Butternut squash', amount: '6', place: room, days: 15 });
  await putIn(phone, { kind: 'Butternut squash', amount: '2', place: room, days: 15, state: 'damaged' });

  await phone.goto('/withy-reach');
  await expect(phone.locator('.due li', { hasText: 'The shed' })).toContainText('4 lots');
  await phone.locator('.due li', { hasText: 'The shed' }).getByRole('link', { name: 'Begin the round' }).click();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('6 lots to go over');
  await expect(phone.getByText('16 days late, 1 round missed').first()).toBeVisible();
  await looksRight(phone);

  // One press: all sound. A second tap of the same thumb does nothing to the next lot.
  const thumb = phone.locator('.heap-thumb button');
  const box = await thumb.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(72);
  await thumb.dblclick();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('5 lots to go over');
  await expect(phone.getByRole('status').first()).toContainText('Potatoes: 25 kg sound. It can be undone below.');

  // Some used, some bad: more than there were is refused beside its field.
  await expect(phone.locator('.round-now .heap-count')).toContainText('40');
  await expect(thumb).toHaveText('All sound');
  await phone.getByLabel('Used since').fill('50');
  await expect(thumb).not.toHaveAttribute('aria-disabled', 'true');
  await thumb.click();
  await expect(phone.locator('.field-error')).toContainText('Only 40 were there');
  await expect(phone.getByLabel('Used since')).toHaveValue('50');
  await looksRight(phone);
  await phone.getByLabel('Used since').fill('7');
  await phone.getByRole('button', { name: 'More used' }).click();
  for (let press = 0; press < 3; press++) await phone.getByRole('button', { name: 'More bad' }).click();
  await phone.getByRole('button', { name: 'Less bad' }).click();
  await phone.getByLabel('Why bad').selectOption('mould');
  await expect(thumb).toHaveText('Save: 8 used, 2 bad');
  await thumb.click();
  await expect(phone.getByRole('status').first()).toContainText('30 sound, 8 used, 2 bad (mould)');

  for (const left of ['3 lots', '2 lots', 'One lot', 'Nothing is due']) {
    await expect(thumb).not.toHaveAttribute('aria-disabled', 'true');
    await thumb.click();
    await expect(phone.getByRole('heading', { level: 1 })).toContainText(left);
  }
  await expect(phone.getByText('All that is due is gone over.')).toBeVisible();
  await looksRight(phone);

  // Undone where it stands, and gone over once more though it was not asked for.
  const garlic = phone.locator('.round-list li', { hasText: 'Garlic' });
  await garlic.getByRole('button', { name: 'Undo' }).click();
  await expect(phone.locator('.round-now .heap-count')).toContainText('40');
  await phone.getByLabel('Used since').fill('5');
  await thumb.click();
  await expect(garlic).toContainText('35 sound, 5 used');
  await phone.goto('/withy-reach');
  await expect(phone.locator('.due li', { hasText: 'Go over the store' })).toHaveCount(0);

  // What to use first, and why.
  await phone.goto(store);
  await expect(phone.locator('.heap-list li').first()).toContainText('It was damaged when it was put in');
  await looksRight(phone);
  await phone.locator('.heap-list li', { hasText: 'Potatoes' }).getByRole('link').click();
  await expect(phone.getByText('It turns sweet below 4.4 °C; here it gets down to 3 °C.')).toBeVisible();
  await expect(phone.getByText('each best kept by themselves').first()).toBeVisible();
  await expect(phone.getByText('Green, sprouting or bitter potatoes can poison')).toBeVisible();
  await looksRight(phone);
  await phone.getByText('Move it to another place').click();
  await phone.getByLabel('To', { exact: true }).selectOption({ label: room });
  await phone.getByRole('button', { name: 'Move it' }).click();
  await expect(phone.getByRole('status').first()).toContainText('Moved.');
  await expect(phone.getByText('It sprouts from 10 °C on; here it gets down to 12 °C.')).toBeVisible();

  // Will the onions last?
  await phone.goto(`${store}/lasts`);
  const onions = phone.locator('section', { has: phone.getByRole('link', { name: 'Onions', exact: true }) });
  await expect(onions).toContainText('Say when you look for the new crop');
  await looksRight(phone);
  await onions.getByRole('link', { name: 'Onions', exact: true }).click();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('Onions: will it last?');
  await phone.getByLabel('Used a week').fill('30');
  await phone.getByLabel('The new crop comes from').fill('midsummer');
  await phone.getByRole('button', { name: 'Keep it' }).click();
  await expect(phone.locator('.field-error')).toContainText('such as 20 July');
  await expect(phone.getByLabel('Used a week')).toHaveValue('30');
  await phone.getByLabel('The new crop comes from').fill('20 July');
  await phone.getByRole('button', { name: 'Keep it' }).click();
  await expect(phone.locator('.answer')).toContainText(/It runs out between .* and .*; about as likely as not by/);
  await expect(phone.locator('.left-chart')).toBeVisible();
  await phone.getByText('In figures').click();
  await expect(phone.getByRole('table', { name: 'How likely any is left' })).toContainText('100 %');
  await expect(phone.getByRole('heading', { name: 'For next year' })).toBeVisible();
  await expect(phone.getByText(/^To last \d+ days/)).toBeVisible();
  await phone.getByText('The model').click();
  await looksRight(phone);
  const address = new URL(phone.url());
  await own.close();

  // The secretary, who keeps everybody's ground, sees nothing of it.
  const reply = await page.request.get(address.pathname + address.search);
  expect(reply.status()).toBe(404);
});

test('the round works with script off', async ({ browser }, info) => {
  const project = info.project.name;
  const secretary = await browser.newPage();
  const link = await inviteNewcomer(secretary, `Quiet keeper ${project}`, `Q-${project}`);
  await secretary.close();
  const joining = await phoneOf(browser);
  await join(await joining.newPage(), link, `quiet.${project}@example.org`);
  const signedIn = { storageState: await joining.storageState(), viewport: { width: 390, height: 844 } };
  const context = await browser.newContext({ ...signedIn, javaScriptEnabled: false });
  const page = await context.newPage();
  await addPlace(page, 'Strings', 'string', '');
  await putIn(page, { kind: 'Onions', amount: '80', place: 'Strings (strings)', days: 20 });
  await putIn(page, { kind: 'Garlic', amount: '30', place: 'Strings (strings)', days: 40 });
  await page.goto(`${store}/round`);
  await expect(page.getByText('The button saves the numbers above')).toBeVisible();
  await expect(page.getByRole('button', { name: 'More used' })).toBeHidden();
  await page.getByLabel('Used since').fill('99');
  await page.locator('.heap-thumb button').click();
  await expect(page.locator('.field-error')).toContainText('Only');
  await expect(page.getByLabel('Used since')).toHaveValue('99');
  await page.getByLabel('Used since').fill('4');
  await page.getByLabel('Taken out bad').fill('1');
  await page.locator('.heap-thumb button').click();
  await expect(page.getByRole('status').first()).toContainText('4 used, 1 bad');
  await page.locator('.heap-thumb button').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing is due');
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('One lot to go over');
  await context.close();
});

test('the ground that a store wants is filled in at the planner, and kept when it is planned', async ({ page }) => {
  await signIn(page, 'treasurer');
  await page.goto('/withy-reach/ground/course?want=onion:40000');
  await expect(page.getByRole('status').first()).toContainText('Onion: 4 m²');
  const chosen = page.locator('.wish-row', { has: page.locator('option:checked[value="onion"]') });
  await expect(chosen.getByLabel('Area')).toHaveValue('4');
  await looksRight(page);
  await page.getByLabel('How many').selectOption('1');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await page.waitForURL(/course\/[0-9a-f-]{36}$/);
  await expect(page.getByRole('heading', { name: 'How good it is' })).toBeVisible({ timeout: 120_000 });
  await page.getByRole('link', { name: 'Ask otherwise' }).click();
  await expect(chosen.getByLabel('Area')).toHaveValue('4');
});
