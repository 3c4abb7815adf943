import { inviteNewcomer, phoneOf } from './newcomer';
import { expect, expectAccessible, signIn, test } from './test';

// A plot-holder's first evening, from the invitation to the booking, as a newcomer would walk it.
test('a newcomer joins, draws five beds in feet, fills in the seasons, moves the onions and books', async ({
  page,
  browser,
}, info) => {
  const name = `Newcomer ${info.project.name}`;
  const number = `N-${info.project.name}`;
  const link = await inviteNewcomer(page, name, number);
  const own = await phoneOf(browser);
  const phone = await own.newPage();
  await phone.goto(link);
  await phone.getByLabel('E-mail address').fill(`newcomer.${info.project.name}@example.org`);
  await phone.getByLabel('Password').fill('short');
  await phone.getByRole('button', { name: /^Join/ }).click();
  await expect(phone.locator('.notice.short')).toContainText('at least 10 characters');
  await expect(phone.getByLabel('E-mail address')).toHaveValue(`newcomer.${info.project.name}@example.org`);
  await phone.getByLabel('Password').fill('a long enough one');
  await phone.getByRole('button', { name: /^Join/ }).click();
  await expect(phone.getByRole('heading', { level: 1 })).toContainText('doing');

  await phone.getByRole('link', { name: 'Draw beds' }).click();
  await phone.getByLabel('Name').fill('Bed');
  await phone.getByLabel('Width').fill('20 ft');
  await phone.getByLabel('Length').fill('4 ft');
  await phone.getByLabel('How many alike').fill('5');
  await phone.getByLabel('Path between').fill('2 ft');
  await phone.getByRole('button', { name: 'Draw', exact: true }).click();
  await expect(phone.getByRole('status').first()).toContainText('5 beds are drawn');
  // Drawn once more on the same ground, it is refused with the edge named, and what was typed stays.
  await phone.getByLabel('Name').fill('Over');
  await phone.getByLabel('Width').fill('20 ft');
  await phone.getByLabel('Length').fill('4 ft');
  await phone.getByLabel('From the left').fill('60 cm');
  await phone.getByLabel('From the top').fill('70 cm');
  await phone.getByRole('button', { name: 'Draw', exact: true }).click();
  await expect(phone.locator('.notice.short')).toContainText('over bed Bed 1');
  await expect(phone.getByLabel('Width')).toHaveValue('20 ft');

  const year = new Date().getFullYear();
  await phone.getByRole('link', { name: 'Back to my ground' }).click();
  await phone.getByRole('link', { name: 'Fill in seasons' }).click();
  for (const back of [0, 1, 2]) {
    await phone.getByLabel(`Bed Bed 1, ${year - back}`).selectOption('bare');
    await phone.getByLabel(`Bed Bed 2, ${year - back}`).selectOption(back === 0 ? 'leek' : 'bare');
  }
  await phone.getByRole('button', { name: 'Record these' }).click();
  await expect(phone.getByRole('status').first()).toContainText('6 recorded');

  await phone.getByRole('link', { name: 'Bed 2', exact: true }).click();
  await phone.getByLabel('Crop').selectOption('onion');
  await phone
    .getByLabel('Season')
    .first()
    .fill(String(year + 1));
  await phone.getByRole('button', { name: 'Judge it' }).click();
  await expect(phone.getByText(`stands on Leek of ${year}`).first()).toBeVisible();
  await phone.getByRole('link', { name: 'bed Bed 1' }).click();
  await expect(phone.getByText('kept').first()).toBeVisible();
  await phone.getByRole('button', { name: `Plan it for ${year + 1}` }).click();
  await expect(phone.getByRole('cell', { name: `${year + 1}, planned` })).toBeVisible();
  await expectAccessible(phone);

  await phone.getByRole('link', { name: 'Deliveries', exact: true }).click();
  await phone.getByRole('link', { name: /^Stable load of \d/ }).click();
  await phone.getByRole('button', { name: 'Book', exact: true }).click();
  await expect(phone.getByRole('heading', { name: /^You ask for \d+ loads?/ })).toBeVisible();
  await own.close();
});

test('booking works with script switched off, and refuses plainly', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await signIn(page, 'member');
  await page.goto('/withy-reach/deliveries');
  await page.getByRole('link', { name: /^Stable load of \d/ }).click();
  await page.getByLabel('Barrow-loads you ask for').fill('a few');
  await page.getByRole('button', { name: /^(Book|Change the booking)$/ }).click();
  await expect(page.locator('.field-error')).toContainText('Give whole loads');
  await expect(page.getByLabel('Barrow-loads you ask for')).toHaveValue('a few');
  await page.getByLabel('Barrow-loads you ask for').fill('3');
  await page.getByRole('button', { name: /^(Book|Change the booking)$/ }).click();
  await expect(page.getByRole('heading', { name: 'You ask for 3 loads' })).toBeVisible();
  await context.close();
});

test('the committee reads off how the rotation is kept', async ({ page }) => {
  await signIn(page, 'chair');
  await page.goto('/withy-reach/site');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('what stands where');
  const table = page.getByRole('region', { name: /^Kept, short/ });
  for (const word of ['kept', 'short', 'not known', 'outside the rotation', 'bare', 'cultivable'])
    await expect(table).toContainText(word);
  await page.getByRole('link', { name: /planned$/ }).click();
  await expect(page.getByRole('heading', { name: /as planned$/ })).toBeVisible();
});
