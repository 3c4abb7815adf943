/** One thing done on one of the connections; throws when it goes wrong. */
export type Work = (connection: number) => Promise<unknown>;

export type Load = { readonly perSecond: number; readonly p50Ms: number; readonly p95Ms: number };

type Round = { readonly times: number[]; readonly seconds: number };

/**
 * Do several things turn by turn, so that all see the same machine: each connection begins again as soon as it is done.
 * The first round of each warms it up and does not count.
 */
export async function turnByTurn<Name extends string>(
  works: Readonly<Record<Name, Work>>,
  given: { readonly connections: number; readonly seconds: number; readonly rounds: number },
): Promise<Record<Name, Load>> {
  const names = Object.keys(works) as Name[];
  const rounds = new Map<Name, Round[]>(names.map((name) => [name, []]));
  for (let nth = 0; nth <= given.rounds; nth++)
    for (const name of names) {
      const round = await oneRound(works[name], given.connections, nth === 0 ? given.seconds / 2 : given.seconds);
      if (nth > 0) rounds.get(name)?.push(round);
    }
  return Object.fromEntries(names.map((name) => [name, loadOf(rounds.get(name) ?? [])])) as Record<Name, Load>;
}

/** One round of one thing on so many connections. */
export async function roundOf(work: Work, connections: number, seconds: number): Promise<Load> {
  return loadOf([await oneRound(work, connections, seconds)]);
}

async function oneRound(work: Work, connections: number, seconds: number): Promise<Round> {
  const times: number[] = [];
  const from = performance.now();
  const until = from + seconds * 1000;
  const loop = async (connection: number) => {
    do {
      const begun = performance.now();
      await work(connection);
      times.push(performance.now() - begun);
    } while (performance.now() < until);
  };
  await Promise.all(Array.from({ length: connections }, (_, connection) => loop(connection)));
  return { times, seconds: (performance.now() - from) / 1000 };
}

function loadOf(rounds: readonly Round[]): Load {
  const times = rounds.flatMap((round) => round.times).sort((a, b) => a - b);
  const seconds = rounds.reduce((sum, round) => sum + round.seconds, 0);
  const share = (part: number) => times[Math.min(times.length - 1, Math.floor(times.length * part))] ?? 0;
  return { perSecond: times.length / seconds, p50Ms: share(0.5), p95Ms: share(0.95) };
}
