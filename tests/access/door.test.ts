import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { ask, callerOf } from '@/app/_server/caller';
import { startSession } from '@/lib/platform/session';
import { makeSociety } from '../fixtures/society';

// The device's cookies; everything else between the door and the use-cases is the real thing.
const jar = vi.hoisted(() => new Map<string, string>());
vi.mock('next/headers', () => ({
  cookies: async () => ({
    get: (name: string) => (jar.has(name) ? { value: jar.get(name) } : undefined),
    set: (name: string, value: string) => jar.set(name, value),
  }),
}));

beforeEach(() => jar.clear());

const question = { name: 'a question', run: vi.fn(async () => 'an answer') };
const toTheDoor = { digest: expect.stringContaining('/sign-in?to=/somewhere') };

describe('the door', () => {
  it.each([
    ['no cookie', () => undefined],
    ['an empty cookie', () => ''],
    ['a cookie that says nothing', () => 'nonsense'],
    ['a cookie that was tampered with', (good: string) => `${good.slice(0, -6)}aaaaaa`],
    ['a cookie with its seal cut off', (good: string) => good.split('.').slice(0, 4).join('.')],
  ])('sends whoever comes with %s to sign in, and asks nothing', async (_, cookieFrom) => {
    await startSession({ accountId: '00000000-0000-7000-8000-000000000000', sessionVersion: 1 });
    const [[name = '', good = ''] = []] = jar;
    const cookie = cookieFrom(good);
    jar.clear();
    if (cookie !== undefined) jar.set(name, cookie);
    await expect(callerOf('somewhere')).rejects.toMatchObject(toTheDoor);
    await expect(ask(question, 'somewhere')).rejects.toMatchObject(toTheDoor);
    expect(question.run).not.toHaveBeenCalled();
  });

  it('lets in whoever was signed in, as themselves', async () => {
    const { secretary, slug } = await makeSociety();
    const { accountId, sessionVersion } = secretary.caller;
    await startSession({ accountId, sessionVersion });
    expect(await callerOf(slug)).toEqual(secretary.caller);
    expect(await ask(question, slug)).toBe('an answer');
  });
});

// A layout does not guard its pages: each goes through the door itself.
describe('every signed-in page and form', () => {
  const files = ['app/(member)', 'app/(secretary)'].flatMap((folder) =>
    fs
      .readdirSync(folder, { recursive: true })
      .map((name) => path.join(folder, String(name)))
      .filter((name) => /\/(page\.tsx|route\.ts|actions\.ts)$/.test(name)),
  );

  it('goes through the door', () => {
    expect(files.length).toBeGreaterThan(25);
    const through = /\b(ask|callerOf|submitForm|lookThenSubmit)\(/;
    expect(files.filter((name) => !through.test(fs.readFileSync(name, 'utf8')))).toEqual([]);
  });
});
