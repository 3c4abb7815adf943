import { sheetWishNames } from '@/lib/schemas/sheets/sheet';

/** What is asked of a sheet, as it stands in the address. */
export type Asked = Readonly<Record<(typeof sheetWishNames)[number], string>>;

/** What an address asks; of a name that comes twice the first. */
export function askedIn(search: Readonly<Record<string, string | string[] | undefined>>): Asked {
  return Object.fromEntries(sheetWishNames.map((name) => [name, [search[name]].flat()[0] ?? ''])) as Asked;
}

/** The address that asks the same but for some of it. */
export function askWith(asked: Asked, change: Partial<Asked>): string {
  const all = Object.entries({ ...asked, ...change }).filter(([, value]) => value !== '');
  return `?${new URLSearchParams(all)}#answer`;
}
