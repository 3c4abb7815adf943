import type { Page } from '@playwright/test';
import { signIn } from './test';

/** Sign in as somebody, and plan a crop on the first of their beds for next season, whatever other tests did to the ground. */
export async function planCrop(page: Page, role: string, cropKey: string): Promise<void> {
  await signIn(page, role);
  await page.goto('/withy-reach/ground');
  const bed = await page.locator('a[href*="/ground/beds/"]').first().getAttribute('href');
  const next = new Date().getFullYear() + 1;
  await page.goto(`${bed}?cropKey=${cropKey}&season=${next}`);
  await page.getByRole('button', { name: `Plan it for ${next}` }).click();
  await page.waitForURL(/\/beds\/[0-9a-f-]+$/);
}
