import { type AddressInfo } from 'node:net';
import { SMTPServer } from 'smtp-server';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const received: string[] = [];
const server = new SMTPServer({
  authOptional: true,
  disabledCommands: ['STARTTLS'],
  onData(stream, _, end) {
    let text = '';
    stream.on('data', (chunk) => {
      text += chunk;
    });
    stream.on('end', () => {
      received.push(text);
      end();
    });
  },
});

beforeAll(async () => {
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  process.env.SMTP_URL = `smtp://127.0.0.1:${(server.server.address() as AddressInfo).port}`;
});
afterAll(() => new Promise<void>((closed) => void server.close(closed)));

describe('mail', () => {
  it('goes out once, through a real mail server, whoever works the queue', async () => {
    const { inviteMember } = await import('@/lib/usecases/members/invite-member');
    const { startWork } = await import('@/lib/usecases/work-queue');
    const { weekLetter } = await import('@/app/(member)/[society]/_parts/week-letter');
    const { db } = await import('@/lib/data/db');
    const { done, makeMember, makeSociety, once } = await import('../fixtures/society');
    const society = await makeSociety();
    const member = await makeMember(society, { withAccount: false, email: 'new@example.org' });
    const { link } = await done(inviteMember.run(society.secretary.caller, once({ memberId: member.id })));
    const workers = await Promise.all([startWork({ letter: weekLetter }), startWork({ letter: weekLetter })]);
    await expect.poll(() => db().mailMessage.count({ where: { sentAt: { not: null } } }), { timeout: 20_000 }).toBe(1);
    for (const worker of workers) await worker?.stop();
    expect(received).toHaveLength(1);
    expect(received[0]?.replaceAll('=\r\n', '')).toContain(link.split('/').at(-1));
  });
});
