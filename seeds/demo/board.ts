import { randomUUID } from 'node:crypto';
import type { Caller } from '@/lib/usecases/operation';
import type { Outcome } from '@/lib/usecases/refusal';
import { postNotice, startTalk } from '@/lib/usecases/board/start-thread';
import { reply } from '@/lib/usecases/board/write-post';

type Done = <T>(outcome: Promise<Outcome<T>>) => Promise<T>;
type People = { readonly chair: Caller; readonly secretary: Caller; readonly ines: Caller; readonly bea: Caller };

/** What hangs on the demo society’s board: two notices, and two talks. */
export async function loadBoard({ chair, secretary, ines, bea }: People, open: string, done: Done): Promise<void> {
  const once = <T extends object>(typed: T) => ({ writeId: randomUUID(), ...typed });
  await done(
    postNotice.run(
      secretary,
      once({
        title: 'The water is off from the first frost',
        body: 'Drain your butts and leave the taps open.\n\n- Stopcock: by the hut, a quarter turn\n- Back on: when the last frost is past',
        pinned: 'on',
      }),
    ),
  );
  await done(
    postNotice.run(
      chair,
      once({
        title: 'Annual meeting: bring your questions',
        body: 'In the hut, with tea. The papers hang here a week before. **Please say that you have read this**, so that we know whom to ring.',
        mustRead: 'on',
        pinned: 'on',
      }),
    ),
  );
  const { threadId } = await done(
    startTalk.run(
      bea,
      once({
        title: 'Why were my onions small?',
        topic: 'crop:onion',
        body: 'The bed was not dug over when I took it on. Sown in March, outdoors. Half of them were no bigger than a golf ball.',
      }),
    ),
  );
  await done(
    reply.run(
      ines,
      once({
        threadId,
        body: 'Ours are sown under cover in January and go out in April. And the bed is trenched two spits deep the autumn before, with manure in the bottom. *One* year it was not, and they were small too, so I would not swear which of the two it is.',
      }),
    ),
  );
  await done(
    reply.run(
      secretary,
      once({
        threadId,
        body: `Not only there. See what others had, with your own bed among them: /${secretary.slug}/board/results?crop=onion&by=digging – and mind what it says about so few beds.`,
      }),
    ),
  );
  const load = await done(
    startTalk.run(
      ines,
      once({
        title: 'Who helps to unload?',
        topic: `delivery:${open}`,
        body: 'Two of us can be there from nine. A third with a fork would be welcome.',
      }),
    ),
  );
  await done(
    reply.run(
      secretary,
      once({
        threadId: load.threadId,
        body: 'I will be there. Mind your backs: small forkfuls, and turn with your feet.',
      }),
    ),
  );
}
