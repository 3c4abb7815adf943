import ICAL from 'ical.js';
import { expect, expectAccessible, expectNoSidewaysScroll, signIn, test } from './test';

test('a member puts their days into their own calendar, and takes the address back', async ({ page, request }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach/me');
  await page.getByRole('link', { name: 'Reminders' }).click();
  await page.getByRole('button', { name: /Make an address|Make another in its place/ }).click();
  const said = page.getByText('Your calendar’s address, shown this once');
  await expect(said).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  const address = /https?:\S+\.ics/.exec((await said.textContent()) ?? '')?.[0] ?? '';
  const reply = await request.get(address);
  expect([reply.status(), reply.headers()['content-type']]).toEqual([200, 'text/calendar; charset=utf-8']);
  const events = new ICAL.Component(ICAL.parse(await reply.text())).getAllSubcomponents('vevent');
  expect(events.length).toBeGreaterThan(0);
  for (const event of events) {
    const url = String(event.getFirstPropertyValue('url'));
    // Each day leads to where it is done.
    expect((await page.request.get(url)).status()).toBe(200);
  }
  await page.reload();
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(page.getByText('the address leads nowhere now')).toBeVisible();
  expect((await request.get(address)).status()).toBe(404);
});

test('the weekly letter is asked for, and ended', async ({ page, request }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach/me/reminders');
  await page.getByLabel('Send me a letter on Mondays').check();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('comes from next Monday on')).toBeVisible();
  await page.getByLabel('Send me a letter on Mondays').uncheck();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('comes no more')).toBeVisible();
  await page.goto(`/unsubscribe/${'0'.repeat(64)}`);
  await expect(page.getByRole('heading', { name: 'This link ends nothing' })).toBeVisible();
  await expectAccessible(page);
  const press = await request.post(`/api/unsubscribe/${'0'.repeat(64)}`, { form: { 'List-Unsubscribe': 'One-Click' } });
  expect(press.status()).toBe(200);
});
