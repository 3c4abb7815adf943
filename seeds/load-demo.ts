import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import { db, inTransaction } from '@/lib/data/db';
import { saveBooking } from '@/lib/data/booking';
import { holdingsOn } from '@/lib/data/holding';
import { openScopeOfMember, type Scope } from '@/lib/data/scope';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Role } from '@/lib/domain/policy/standing';
import { dayIn } from '@/lib/platform/clock';
import { hashPassword } from '@/lib/platform/secret';
import { needsByHolding, seasonServed } from '@/lib/usecases/ground/holding-need';
import { type Chance, chanceOf } from './chance';
import { loadOpenDelivery, loadPastDelivery } from './demo/deliveries';
import { demoPaths, makeGround, makeManurings, makePlantings } from './demo/ground';
import { households, unmeasured } from './demo/people';

const password = 'three odd words';
const signIns: { role: string; name: string; email: string; password: string }[] = [];

const offices: Record<string, Role[]> = {
  'Gwyneth Apsley': ['secretary'],
  'Samir Khoury': ['treasurer'],
  'Constance Hale': ['chair'],
  'Piotr Zalewski': ['gate_helper'],
};
/** Shown as sign-ins, beside the officers: a couple on a shared plot, and a newcomer to old ground. */
const shown = ['Ines Calloway', 'Bea Longmire'];

async function loadDemo(now: Date): Promise<void> {
  if (await db().society.count()) throw new Error('There is a society already, so the demo is not loaded.');
  const today = dayIn('Europe/London', now);
  const year = Number(today.slice(0, 4));
  const chance = chanceOf(1887);
  const society = await db().society.create({ data: { slug: 'withy-reach', name: 'Withy Reach' } });
  const site = await db().site.create({ data: { societyId: society.id, name: 'Withy Reach', paths: demoPaths } });
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
  await loadDeliveries(
    scope,
    site.id,
    [...new Map([...holdings.values()].map((one) => [one.holdingId, one])).values()],
    chance,
    today,
  );
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

type Claimant = { holdingId: string; memberId: string; onPaper: boolean };

async function loadDeliveries(
  scope: Scope,
  siteId: string,
  claimants: readonly Claimant[],
  chance: Chance,
  today: CalendarDate,
): Promise<void> {
  const some = (share: number) => claimants.filter(() => chance.next() < share);
  const supplier = 'the stables at Marl Lane';
  const spring = {
    name: 'Stable load of the spring',
    arrivesOn: addDays(today, -250),
    heapLoads: 190,
    expectedLoads: 190,
    supplier,
  };
  const summer = {
    name: 'Stable load of the summer',
    arrivesOn: addDays(today, -70),
    heapLoads: 96,
    expectedLoads: 140,
    supplier,
  };
  const next = {
    name: `Stable load of ${new Date(addDays(today, 9)).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' })}`,
    arrivesOn: addDays(today, 9),
    heapLoads: 0,
    expectedLoads: 180,
    supplier,
  };
  await inTransaction((tx) => loadPastDelivery(tx, scope, siteId, spring, some(0.85), chance));
  await inTransaction((tx) => loadPastDelivery(tx, scope, siteId, summer, some(0.8), chance));
  await inTransaction(async (tx) => {
    const closesAt = new Date(`${addDays(today, 6)}T18:00:00Z`);
    const deliveryId = await loadOpenDelivery(tx, scope, siteId, {
      ...next,
      closesAt,
      collectByOn: addDays(today, 23),
      keyHolderId: scope.memberId,
    });
    const dressing = {
      materialKey: 'horse-manure',
      rateGPerM2: 5000,
      barrowLitres: 85,
      densityGPerL: 400,
      intervalYears: 3,
      cultivableSharePercent: 75,
    };
    const holdings = await holdingsOn(tx, scope, today);
    const needs = await needsByHolding(
      tx,
      scope,
      holdings.map(({ id, plots }) => ({ id, plotIds: plots.map((plot) => plot.id) })),
      { season: seasonServed(next.arrivesOn), day: today, dressing },
    );
    const mine = claimants
      .filter(({ onPaper }) => !onPaper)
      .filter((_, at) => at % 5 !== 2)
      .slice(0, 25);
    for (const { holdingId } of mine) {
      const need = needs.get(holdingId);
      if (!need || holdings.find(({ id }) => id === holdingId)?.members.some(({ name }) => shown.includes(name)))
        continue;
      const asked = Math.max(1, Math.min(12, need.loads + chance.whole(-2, 2)));
      const needReason = JSON.parse(
        JSON.stringify({ ...need, lines: need.lines.map(({ footprint: _, ...line }) => line) }),
      );
      await saveBooking(
        tx,
        scope,
        deliveryId,
        {
          holdingId,
          asked,
          needLoads: need.loads,
          needReason,
          onPaper: false,
          beds: need.lines
            .filter(({ kind, massG }) => kind === 'bed' && massG > 0)
            .map(({ id, turn }) => ({ bedId: id, dueCm2: turn.dueCm2 })),
        },
        new Date(),
      );
    }
  });
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
