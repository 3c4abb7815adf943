import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import { db } from '@/lib/data/db';
import { openScopeOfMember, type Scope } from '@/lib/data/scope';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Role } from '@/lib/domain/policy/standing';
import { dayIn } from '@/lib/platform/clock';
import { hashPassword } from '@/lib/platform/secret';
import { recordTrouble } from '@/lib/usecases/ground/keep-troubles';
import { chanceOf } from './chance';
import { loadBallots } from './demo/ballots';
import { loadBoard } from './demo/board';
import { callerOf } from './demo/caller-of';
import { planDates } from './demo/dates';
import { done } from './demo/done';
import { makeGround, makeManurings, makePlantings } from './demo/ground';
import { loadHarvests } from './demo/harvest';
import { loadMoney } from './demo/money';
import { growSmallOnions, loadNotes } from './demo/notes';
import { type Claimant, loadDeliveries } from './demo/next-delivery';
import { households, shown, unmeasured } from './demo/people';
import { loadSeed } from './demo/seed';
import { changeSharedPlot, digHalfABed } from './demo/shared-plot';
import { loadStore } from './demo/store';
import { type Grower, loadTrials } from './demo/trials';

const password = 'three odd words';
const signIns: { role: string; name: string; email: string; password: string }[] = [];

const offices: Record<string, Role[]> = {
  'Gwyneth Apsley': ['secretary'],
  'Samir Khoury': ['treasurer'],
  'Constance Hale': ['chair'],
  'Piotr Zalewski': ['gate_helper'],
};

/** Who weighs and counts what they lift, and the plots that they lift it from. */
const harvesting = [
  ['Gwyneth Apsley', ['A4', 'B4']],
  ['Ines Calloway', ['A3']],
  ['Bea Longmire', ['C10']],
] as const;

async function loadDemo(now: Date): Promise<void> {
  if (await db().society.count()) throw new Error('There is a society already, so the demo is not loaded.');
  const today = dayIn('Europe/London', now);
  const year = Number(today.slice(0, 4));
  const chance = chanceOf(1887);
  const society = await db().society.create({ data: { slug: 'withy-reach', name: 'Withy Reach' } });
  const site = await db().site.create({ data: { societyId: society.id, name: 'Withy Reach' } });
  const ids = { societyId: society.id, siteId: site.id };
  const memberOf = await loadPeople(society.id, `${year - 6}-10-01`);
  const from = `${year - 6}-01-01`;
  const ground = makeGround(chance, ids, from, {
    number: unmeasured.plots[0] ?? '',
    quarterRods: unmeasured.quarterRods,
  });
  await db().frame.createMany({ data: ground.frames });
  await db().plot.createMany({ data: ground.plots });
  await db().bed.createMany({ data: ground.beds });
  const holdings = await loadHoldings(society.id, ground, memberOf, year);
  const plantings = ground.made.flatMap((plot) =>
    makePlantings(chance, society.id, plot, holdings.get(plot.id)?.holdingId ?? null, year),
  );
  await db().planting.createMany({ data: plantings });
  await db().groundWork.createMany({
    data: ground.made.flatMap((plot) =>
      makeManurings(chance, society.id, plot, holdings.get(plot.id)?.holdingId ?? null, year),
    ),
  });
  const scope = await openScopeOfMember(db(), memberOf.get('Gwyneth Apsley') ?? '');
  const past = await loadDeliveries(
    scope,
    site.id,
    [...new Map([...holdings.values()].map((one) => [one.holdingId, one])).values()],
    chance,
    today,
  );
  const treasurer = await callerOf(scope.slug, memberOf.get('Samir Khoury') ?? '');
  await loadMoney(treasurer, past, chanceOf(1904), today);
  const shared = ground.made.find(({ number }) => number === 'A3')?.id ?? '';
  await changeSharedPlot(scope, memberOf.get('Ruben Calloway') ?? '', shared, year);
  await planDates(await callerOf(scope.slug, memberOf.get('Ruben Calloway') ?? ''), shared, today);
  const bedOn = async (plotNumber: string, nth: number) => {
    const plotId = ground.made.find(({ number }) => number === plotNumber)?.id ?? '';
    return (await db().bed.findMany({ where: { plotId }, orderBy: { name: 'asc' } }))[nth]?.id ?? '';
  };
  await digHalfABed(scope, memberOf.get('Ruben Calloway') ?? '', today);
  await orderSeed(scope, [...holdings.values()], shared, today);
  await loadStore(await callerOf(scope.slug, memberOf.get('Ines Calloway') ?? ''), today);
  await findTroubles(scope, year, [await bedOn('A4', 1), await bedOn('C8', 2)]);
  const old = ground.made.find(({ number }) => number === 'C10')?.id ?? '';
  const newcomer = { caller: await callerOf(scope.slug, memberOf.get('Bea Longmire') ?? ''), plotIds: [old] };
  await growSmallOnions(newcomer, { season: year, today });
  for (const [name, numbers] of harvesting)
    await loadHarvests(
      await callerOf(scope.slug, memberOf.get(name) ?? ''),
      ground.made.filter(({ number }) => numbers.some((one) => one === number)).map(({ id }) => id),
      { chance: chanceOf(1911), today, most: 7 },
    );
  await compareNotes(scope, ground, holdings, today);
  const caller = (name: string) => callerOf(scope.slug, memberOf.get(name) ?? '');
  const open = await db().delivery.findFirst({ where: { societyId: society.id, state: 'open' }, select: { id: true } });
  const writers = { chair: await caller('Constance Hale'), secretary: await caller('Gwyneth Apsley') };
  const talkers = { ines: await caller('Ines Calloway'), bea: await caller('Bea Longmire') };
  await loadBoard({ ...writers, ...talkers }, open?.id ?? '', done);
  const growers = await growersOf(scope, holdings, shared);
  await loadTrials(memberOf.get('Ines Calloway') ?? '', growers, chanceOf(1908), today);
  await loadBallots({ ...writers, ...talkers, treasurer }, today);
  await loadSecondSociety(memberOf, today);
  const state = process.env.BARROWMOOT_STATE ?? '.data';
  fs.mkdirSync(state, { recursive: true });
  fs.writeFileSync(`${state}/demo-sign-ins.json`, JSON.stringify(signIns, null, 2), { mode: 0o600 });
  console.log(`demo society loaded: ${ground.plots.length} plots, ${plantings.length} plantings`);
}

async function loadPeople(societyId: string, joinedOn: string): Promise<Map<string, string>> {
  const passwordHash = await hashPassword(password);
  const memberOf = new Map<string, string>();
  for (const { people, onPaper } of [...households, unmeasured])
    for (const name of people) {
      const email = onPaper ? null : `${name.toLowerCase().replace(' ', '.')}@example.org`;
      const account = email ? await db().account.create({ data: { email, passwordHash } }) : null;
      const member = await db().member.create({
        data: {
          societyId,
          name,
          email,
          accountId: account?.id ?? null,
          joinedOn: new Date(joinedOn),
          units: shown.includes(name) ? 'imperial' : 'metric',
        },
      });
      memberOf.set(name, member.id);
      const roles = offices[name] ?? [];
      await db().memberRole.createMany({ data: roles.map((role) => ({ societyId, memberId: member.id, role })) });
      if (email && (roles.length || shown.includes(name)))
        signIns.push({ role: roles[0]?.replace('_', ' ') ?? 'member', name, email, password });
    }
  return memberOf;
}

type Ground = ReturnType<typeof makeGround>;

async function loadHoldings(societyId: string, ground: Ground, memberOf: Map<string, string>, year: number) {
  const plotOf = new Map([
    ...ground.made.map(({ id, number }) => [number, id] as const),
    [unmeasured.plots[0] ?? '', ground.unmeasured.id],
  ]);
  const made = new Map<string, { holdingId: string; memberId: string; onPaper: boolean }>();
  for (const { plots, people, onPaper = false } of [...households, unmeasured]) {
    const memberIds = people.map((name) => memberOf.get(name) ?? '');
    // Two friends on one plot who fell out: the secretary named one of them.
    const booker = plots.includes('A9') ? (memberIds[0] ?? null) : null;
    const holding = await db().holding.create({ data: { societyId, bookerMemberId: booker } });
    const fromOn = new Date(plots.includes('C10') ? `${year}-03-01` : `${year - 6}-10-01`);
    await db().holdingMember.createMany({
      data: memberIds.map((memberId) => ({ societyId, holdingId: holding.id, memberId, fromOn })),
    });
    for (const number of plots) {
      const plotId = plotOf.get(number) ?? '';
      await db().tenancy.create({ data: { societyId, plotId, holdingId: holding.id, fromOn } });
      made.set(plotId, { holdingId: holding.id, memberId: memberIds[0] ?? '', onPaper });
    }
  }
  return made;
}

/** Who has an account lets their onions be compared; the newcomer has said nothing yet. */
async function compareNotes(
  scope: Scope,
  { made }: ReturnType<typeof makeGround>,
  holdings: ReadonlyMap<string, Claimant>,
  today: CalendarDate,
): Promise<void> {
  const logging = new Set<string>(harvesting.flatMap(([, numbers]) => numbers));
  const claimants = [...new Map([...holdings.values()].map((one) => [one.holdingId, one])).values()];
  const growers = claimants
    .filter(({ onPaper }) => !onPaper)
    .map(async ({ holdingId, memberId }) => {
      const plots = made.filter(({ id }) => holdings.get(id)?.holdingId === holdingId);
      const logs = plots.some(({ number }) => logging.has(number));
      return { holdingId, logs, plotIds: plots.map(({ id }) => id), caller: await callerOf(scope.slug, memberId) };
    });
  const newcomers = made.filter(({ number }) => number === 'C10').map(({ id }) => holdings.get(id)?.holdingId);
  const asked = (await Promise.all(growers)).filter(({ holdingId }) => !newcomers.includes(holdingId));
  await loadNotes(asked, { chance: chanceOf(1936), today });
}

/** The secretary runs an order of seed; some have put their lists down, those whose sign-ins are shown have not. */
async function orderSeed(scope: Scope, claimants: readonly Claimant[], sharedId: string, today: CalendarDate) {
  const keeperOf = async ({ holdingId, memberId }: Claimant) => ({
    caller: await callerOf(scope.slug, memberId),
    holdingId,
  });
  const [secretary] = await Promise.all(claimants.filter(({ memberId }) => memberId === scope.memberId).map(keeperOf));
  const others = claimants.filter(({ memberId, onPaper }) => !onPaper && memberId !== scope.memberId);
  const couple = await db().tenancy.findFirstOrThrow({ where: { plotId: sharedId, untilOn: null } });
  const ofCouple = others.filter(({ holdingId }) => holdingId === couple.holdingId);
  const tins = await Promise.all(ofCouple.slice(0, 1).map(keeperOf));
  const listed = others.filter(({ holdingId }) => holdingId !== couple.holdingId).slice(10, 16);
  const caller = await callerOf(scope.slug, scope.memberId);
  await loadSeed(caller, await Promise.all(listed.map(keeperOf)), secretary ? [secretary, ...tins] : tins, today);
}

/** Clubroot in a corner of the secretary's own ground, and white rot on a plot she keeps the records of. */
async function findTroubles(scope: Scope, year: number, [corner = '', whole = '']: readonly string[]): Promise<void> {
  const secretary = await callerOf(scope.slug, scope.memberId);
  const found = (bedId: string, facts: object) =>
    done(recordTrouble.run(secretary, { writeId: randomUUID(), bedId, ...facts }));
  await found(corner, {
    troubleKey: 'clubroot',
    certainty: 'sure',
    foundOn: `${year - 2}-08-14`,
    partFrom: '0 m',
    partLength: '0.9 m',
  });
  await found(whole, { troubleKey: 'white-rot', certainty: 'likely', foundOn: `${year}-07-02` });
}

/** Seven who try something out: the couple on the shared plot, and six others. */
async function growersOf(scope: Scope, holdings: ReadonlyMap<string, Claimant>, sharedId: string): Promise<Grower[]> {
  const plots = [...holdings].filter(([, { onPaper }]) => !onPaper);
  const ofShared = plots.filter(([plotId]) => plotId === sharedId);
  const others = plots.filter(([, { holdingId }]) => holdingId !== ofShared[0]?.[1].holdingId);
  const once = [...new Map(others.map((one) => [one[1].holdingId, one])).values()];
  const measured = new Set((await db().bed.findMany({ select: { plotId: true } })).map(({ plotId }) => plotId));
  return Promise.all(
    [...ofShared, ...once.filter(([plotId]) => measured.has(plotId)).slice(4, 10)].map(
      async ([plotId, { holdingId, memberId }]) => ({
        ...{ plotId, holdingId, memberId },
        caller: await callerOf(scope.slug, memberId),
      }),
    ),
  );
}

// One of the members grows on a second, small site too.
async function loadSecondSociety(memberOf: Map<string, string>, today: CalendarDate): Promise<void> {
  const member = await db().member.findUniqueOrThrow({ where: { id: memberOf.get('Constance Hale') ?? '' } });
  const society = await db().society.create({ data: { slug: 'little-hay', name: 'Little Hay' } });
  const joinedOn = new Date(addDays(today, -400));
  const second = await db().member.create({
    data: { societyId: society.id, name: member.name, email: member.email, accountId: member.accountId, joinedOn },
  });
  await db().memberRole.create({ data: { societyId: society.id, memberId: second.id, role: 'secretary' } });
  await db().site.create({ data: { id: randomUUID(), societyId: society.id, name: 'Little Hay' } });
}

await loadDemo(new Date());
await db().$disconnect();
