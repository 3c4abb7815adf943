import type { Page } from '@playwright/test';
import { expect, signIn, test } from './test';

// Nothing here touches a mouse or a screen: Tab, Enter, Space and typing only.

/** Tab until the thing that has the focus is called so; fails after a whole page of stops, or where a stop cannot be seen. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let stops = 0; stops < 150; stops++) {
    await page.keyboard.press('Tab');
    const focused = page.locator(':focus');
    if ((await focused.count()) === 0) continue;
    if (name.test(await nameOf(focused))) return expectSeen(page);
  }
  throw new Error(`no stop is called ${name}`);
}

type Found = ReturnType<Page['locator']>;

function nameOf(focused: Found): Promise<string> {
  return focused.evaluate((element) => {
    const labels =
      element instanceof HTMLInputElement ? [...(element.labels ?? [])].map((label) => label.innerText) : [];
    return labels.join(' ') || element.getAttribute('aria-label') || (element as HTMLElement).innerText || '';
  });
}

// Where the focus is must be seen: in view, with an outline, and not under the bar at the foot of a phone.
async function expectSeen(page: Page): Promise<void> {
  await expect
    .poll(() =>
      page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        const box = element.getBoundingClientRect();
        const [x, y] = [box.left + Math.min(box.width / 2, 20), box.top + Math.min(box.height / 2, 20)];
        const top = document.elementFromPoint(x, y);
        const isOnTop = top !== null && (element.contains(top) || top.contains(element));
        return { isOutlined: outlineStyle !== 'none' && outlineWidth !== '0px', isOnTop };
      }),
    )
    .toEqual({ isOutlined: true, isOnTop: true });
}

test('the head of a page is skipped, and the pages are reached, by the keyboard', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach');
  await tabTo(page, /^Skip to the page$/);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#main$/);
  await page.goto('/withy-reach');
  await tabTo(page, /^Deliveries$/);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/deliveries$/);
});

test('loads are booked by the keyboard, and a refusal is read out and leads to its field', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach/deliveries');
  await tabTo(page, /^Stable load of \d/);
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Barrow-loads you ask for')).toBeVisible();
  await tabTo(page, /^Barrow-loads you ask for/);
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('many');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert').first()).toBeFocused();
  await tabTo(page, /Give whole loads/);
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Barrow-loads you ask for')).toBeFocused();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('4');
  await tabTo(page, /^(Book|Change the booking)$/);
  await page.keyboard.press('Space');
  await expect(page.getByRole('heading', { name: 'You ask for 4 loads' })).toBeVisible();
  await tabTo(page, /^Why \d+\?$/);
  await page.keyboard.press('Enter');
  await expect(page.getByText('rounded up once').filter({ visible: true }).first()).toBeVisible();
});

test('a trench is ticked by the keyboard', async ({ page }) => {
  await signIn(page, 'member');
  await page.goto('/withy-reach');
  await tabTo(page, /^Go on digging$/);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/ground\/sheets\//);
  const trench = Number(/\d+/.exec(await page.getByRole('heading', { name: /^Now: trench \d+$/ }).innerText())?.[0]);
  await tabTo(page, new RegExp(`^Trench ${trench} done$`));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: `Now: trench ${trench + 1}` })).toBeVisible();
  await tabTo(page, new RegExp(`^Undo trench ${trench}$`));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: `Now: trench ${trench}`, exact: true })).toBeVisible();
});
