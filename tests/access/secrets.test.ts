import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { todayIn } from '@/lib/platform/clock';
import { readOwnArchive, readSocietyArchive } from '@/lib/usecases/export/export-society';
import { readBed } from '@/lib/usecases/ground/read-ground';
import type { Caller } from '@/lib/usecases/operation';
import { changeHolders, endTenancy, letPlot } from '@/lib/usecases/plots/keep-tenancies';
import { readSite } from '@/lib/usecases/site/read-site';
import { done, makeMember, once, refusedWith } from '../fixtures/society';
import { answerTo, idsIn, writtenIn } from './answers';
import { thisYear } from './fill/ground';
import { holderLiftedG } from './fill/harvest';
import { storedPieces } from './fill/store';
import { trialGaveG, withheldG } from './fill/trials';
import { ballots } from './matrix/ballots';
import { board } from './matrix/board';
import { rows } from './matrix/rows';
import { committee, everybody, idsNamed, moneyKeepers, people, type Person, type Row, secretary } from './row';
import { fillSociety, type FilledSociety, holderWeighsKg } from './society';

/** Who sees which text of the society in the answers to all questions: exactly these, and nobody else. */
const seen: Readonly<Record<string, readonly Person[]>> = {
  // A holding's own records: not even the committee's, and not those who take the ground over.
  'holder notes': ['holder'],
  'holder variety': ['holder'],
  'neighbour notes': ['neighbour'],
  'holder harvest notes': ['holder'],
  'neighbour harvest notes': ['neighbour'],
  'neighbour variety': ['neighbour'],
  'former notes': [],
  'former variety': [],
  'former holder': committee,
  // How somebody is reached: the members' list is the committee's; everybody sees their own.
  'holder-mail': [...committee, 'holder'],
  'holder phone': [...committee, 'holder'],
  'holder postal': [...committee, 'holder'],
  'neighbour-mail': [...committee, 'neighbour'],
  'neighbour phone': [...committee, 'neighbour'],
  'neighbour postal': [...committee, 'neighbour'],
  'left-mail': committee,
  // In nobody’s answer but their own archive.
  'holder-sign-in': ['holder'],
  'trouble notes': ['holder'],
  hash: [],
  // A delivery is there once it is opened; the book names it to the committee before.
  'open gate': everybody,
  'planned gate': secretary,
  'planned supplier': committee,
  // Who brings it, what they get for it, and how they are reached.
  'supplier name': secretary,
  'supplier reach': secretary,
  'supplier remarks': secretary,
  'supplier thanks': secretary,
  // What was done, before and after, and why.
  reason: committee,
  // What the society shows to all of its members.
  crop: everybody,
  'bed 3': everybody,
  'open supplier': everybody,
  'held because': everybody,
  'tested load': everybody,
  // Money: a holding's account is its holders' and the committee's, the rest of the ledger the committee's.
  'payment words': [...committee, 'holder'],
  'charge words': [...committee, 'holder'],
  'supplier paid': committee,
  'own account': committee,
  'how to pay': everybody,
  'drop point by the tap': everybody,
  // The board: all of it every member's, but what is hidden or was taken back, and what was told of it.
  'talk title': everybody,
  'post words': everybody,
  'words before an edit': everybody,
  'notice words': everybody,
  'picture says': everybody,
  'board rules': everybody,
  'hidden words': [...committee, 'neighbour'],
  'hidden because': [...committee, 'neighbour'],
  'words taken back': [...committee, 'holder'],
  'reported because': [...committee, 'neighbour'],
  // A question is the committee’s until it is put; then everybody reads it.
  'drafted question': committee,
  'drafted question body': committee,
  'open question body': everybody,
  'decided question': everybody,
  'withdrawn because': everybody,
  // A tin is its holders' alone; an order is there once it is opened, and where it is ordered is said to those who keep it.
  'holder packet': ['holder'],
  'neighbour packet': ['neighbour'],
  'planned seed order': moneyKeepers,
  'open seed order': everybody,
  'open seller': moneyKeepers,
  'seed order notes': everybody,
  'listed variety': everybody,
  // Manure of one’s own is one’s own affair.
  'own manure': ['holder'],
  // So is what a household keeps and eats.
  'holder shed': ['holder'],
  'holder bulbs': ['holder'],
  'holder grown': ['holder'],
  'holder lot remarks': ['holder'],
  'neighbour shed': ['neighbour'],
  'neighbour bulbs': ['neighbour'],
  // A trial is every member’s to look at.
  'trial question': everybody,
  'trial a': everybody,
};

let society: FilledSociety;
let answers: Readonly<Record<Person, string>>;
const marked = (what: string) => `${society.tag}${what.includes('-') ? '-' : ' '}${what}`;

beforeAll(async () => {
  society = await fillSociety();
  const ids = await idsIn(society.id);
  const all = await Promise.all(
    people.map(async (who) => [who, await everyAnswer(society.callers[who], ids)] as const),
  );
  answers = Object.fromEntries(all) as Record<Person, string>;
  // Every question there is, with every id of its kind, by everybody.
}, 240_000);

describe('in the answers to every question', () => {
  it.each(Object.entries(seen))('“%s” is seen by %j', async (what, who) => {
    expect(await writtenIn(society.id)).toContain(marked(what));
    expect(people.filter((person) => answers[person].includes(marked(what)))).toEqual(
      people.filter((one) => who.includes(one)),
    );
  });

  it('the lot is seen by nobody before it is drawn, and by everybody after', async () => {
    const deliveries = await db().delivery.findMany({ where: { societyId: society.id, lotBytesHex: { not: null } } });
    expect(deliveries.map(({ state }) => state).sort()).toEqual([
      'closed',
      // One that nobody booked in time.
      'closed',
      'collecting',
      'collecting',
      'open',
      'settled',
      'settled',
      'tipped',
    ]);
    for (const { state, lotBytesHex, lotRevealedAt } of deliveries) {
      const who = people.filter((person) => answers[person].includes(lotBytesHex ?? ''));
      expect({ state, who }).toEqual({ state, who: lotRevealedAt ? people : [] });
    }
  });

  it('what somebody weighs and how old they are is theirs alone', async () => {
    const said = [`"bodymasskg":{"value":${holderWeighsKg},`, '"ageband":{"value":"60-or-over",'];
    for (const words of said) expect(people.filter((who) => answers[who].includes(words))).toEqual(['holder']);
    const book = await writtenIn(society.id, ['AuditRow', 'WriteOnce']);
    expect(book).toContain('habit.bodymasskg');
    expect(book).not.toContain('60-or-over');
    expect(book).not.toMatch(new RegExp(`habit[^}]*\\b${holderWeighsKg}\\b`));
  });

  it('what somebody lifted is theirs alone, and stands in no book', async () => {
    const weight = new RegExp(`\\b${holderLiftedG}\\b`);
    expect(await writtenIn(society.id, ['Harvest'])).toMatch(weight);
    expect(people.filter((who) => weight.test(answers[who]))).toEqual(['holder']);
    const book = await writtenIn(society.id, ['AuditRow', 'WriteOnce']);
    expect(book).toContain('log-harvest');
    expect(book).not.toMatch(weight);
  });

  it('what somebody’s ground gave in a trial is theirs alone until it is reported, or where that is withheld; it stands in no book', async () => {
    for (const gave of [trialGaveG, withheldG]) {
      const weight = new RegExp(`\\b${gave}\\b`);
      expect(await writtenIn(society.id, ['TrialResult'])).toMatch(weight);
      expect(people.filter((who) => weight.test(answers[who]))).toEqual(['holder']);
      expect(await writtenIn(society.id, ['AuditRow', 'WriteOnce'])).not.toMatch(weight);
    }
  });

  it('whose a block of a trial is stands in no book', async () => {
    const book = await writtenIn(society.id, ['AuditRow']);
    const blocks = await db().trialBlock.findMany({ where: { societyId: society.id }, include: { grounds: true } });
    const ids = blocks.flatMap(({ id, grounds }) => [id, ...grounds.map((ground) => ground.id)]);
    expect(ids.length).toBeGreaterThan(3);
    expect(ids.filter((id) => book.includes(id))).toEqual([]);
  });

  it('the lot of a trial is seen by nobody before it is laid out, and by everybody after', async () => {
    const trials = await db().trial.findMany({ where: { societyId: society.id } });
    expect(trials.map(({ laidOutAt }) => laidOutAt !== null).sort()).toEqual([false, true, true]);
    for (const { lotBytesHex, laidOutAt } of trials)
      expect(people.filter((who) => answers[who].includes(lotBytesHex))).toEqual(laidOutAt ? people : []);
  });

  it('how much somebody has in store, and uses, is theirs alone, and stands in no book', async () => {
    const holders = people.filter((who) => answers[who].includes(String(storedPieces)));
    expect(holders).toEqual(['holder', 'neighbour']);
    expect(people.filter((who) => answers[who].includes('"tenthsperweek":50'))).toEqual(['holder', 'neighbour']);
    const book = await writtenIn(society.id, ['AuditRow']);
    expect(book).toContain('store lot');
    expect(book).not.toContain(String(storedPieces));
    expect(book).not.toContain('onion');
  });

  it('the society’s archive holds nothing that is its holders’ own, and nothing sealed', async () => {
    const everything = (await answerTo(readSocietyArchive, society.callers.secretary, {})).text;
    for (const what of ['holder-mail', 'holder phone', 'crop', 'reason', 'open supplier', 'tested load'])
      expect([what, everything.includes(marked(what))]).toEqual([what, true]);
    const own = [
      'holder notes',
      'holder harvest notes',
      'neighbour variety',
      'former notes',
      'trouble notes',
      'own manure',
      'holder shed',
      'holder bulbs',
      'neighbour shed',
      'open gate',
      'hash',
    ];
    expect([...own, 'holder-sign-in'].filter((what) => everything.includes(marked(what)))).toEqual([]);
    // That somebody said what they weigh stands in the book; what they said does not.
    for (const word of [
      'own-habits.csv',
      '60-or-over',
      'needreason',
      'duecm2',
      'tokenhash',
      'passwordhash',
      'gatenote',
      // Whose hand was raised for what is in a result, and never in the hands before it.
      'raisedbymemberid',
    ])
      expect([word, everything.includes(word)]).toEqual([word, false]);
    const deliveries = await db().delivery.findMany({ where: { societyId: society.id, lotBytesHex: { not: null } } });
    for (const { lotBytesHex, lotRevealedAt } of deliveries)
      expect(everything.includes(lotBytesHex ?? '')).toBe(lotRevealedAt !== null);
  });

  it('a member’s own archive holds their notes, habits and needs, and nobody else’s', async () => {
    const mine = (await answerTo(readOwnArchive, society.callers.holder, {})).text;
    for (const what of [
      'holder notes',
      'holder harvest notes',
      'holder variety',
      'trouble notes',
      'own manure',
      'holder shed',
      'holder bulbs',
      'holder lot remarks',
      'holder-sign-in',
      'holder phone',
    ])
      expect([what, mine.includes(marked(what))]).toEqual([what, true]);
    for (const word of ['habit.bodymasskg', 'needreason', 'raisedbymemberid']) expect(mine).toContain(word);
    const others = [
      'neighbour notes',
      'neighbour harvest notes',
      'neighbour shed',
      'neighbour bulbs',
      'neighbour-mail',
      'former notes',
      'secretary phone',
      'reason',
      'open gate',
    ];
    expect(others.filter((what) => mine.includes(marked(what)))).toEqual([]);
  });

  it('no way in is seen by anybody', async () => {
    const [invitation] = await db().invitation.findMany({ where: { societyId: society.id } });
    expect(invitation?.tokenHash).toMatch(/^[0-9a-f]{64}$/);
    expect(people.filter((who) => answers[who].includes(invitation?.tokenHash ?? ''))).toEqual([]);
  });

  it('what a claim’s need was worked out from is its holders’ own', async () => {
    const reasons = people.filter((who) => answers[who].includes('"needreason"'));
    expect(reasons).toEqual(['holder', 'neighbour']);
  });
});

describe('the site plan shows a neighbour as much as the society allows', () => {
  const shown = (crop: boolean, group: boolean) => ({ crop, group });

  it.each([
    ['crop', shown(true, true)],
    ['group', shown(false, true)],
    ['nothing', shown(false, false)],
  ])('when that is %s', async (value, expected) => {
    const { id, ids, callers } = society;
    const setting = { societyId: id, key: 'neighboursSee', value, effectiveFrom: new Date('2020-01-01') };
    await db().societySetting.create({ data: setting });
    const input = { siteId: ids.siteId, season: thisYear() };
    for (const who of ['neighbour', 'gate_helper'] as const) {
      const bed = bedIn(await readSite.run(callers[who], input), ids.bedId);
      const [planting] = bed.plantings;
      expect(shown(planting?.cropName === marked('crop'), planting?.cropGroup === 'roots')).toEqual(expected);
      expect(bed).toMatchObject({ href: null, mark: null });
    }
    for (const who of ['chair', 'treasurer', 'secretary', 'holder'] as const) {
      const bed = bedIn(await readSite.run(callers[who], input), ids.bedId);
      expect(bed.plantings[0]?.cropName).toBe(marked('crop'));
    }
  });
});

describe('whoever takes the ground over', () => {
  it('sees crops and manuring, never the last holder’s notes, variety, name or contact', async () => {
    const { id, slug, ids, callers } = society;
    const { plotId, holdingId } = ids;
    const next = await makeMember({ id, slug });
    const from = todayIn('Europe/London');
    const swap = changeHolders.run(callers.secretary, once({ holdingId, memberIds: [next.id], from }));
    expect(await refusedWith(swap)).toEqual(['no-holder-stays']);
    await done(endTenancy.run(callers.secretary, once({ plotId, from, sure: 'yes' })));
    await done(letPlot.run(callers.secretary, once({ plotId, memberIds: [next.id], from })));
    const bed = await readBed.run(next.caller, { bedId: ids.bedId });
    expect(bed.plantings.map(({ cropName }) => cropName)).toEqual([marked('crop'), 'Kale']);
    expect(bed.works).toHaveLength(1);
    // On the board they signed what they wrote themselves, and a count of hands is an open one.
    const text = await everyAnswer(
      next.caller,
      await idsIn(id),
      rows.filter((row) => ![...board, ...ballots].includes(row)),
    );
    const lasts = [
      'holder',
      'holder notes',
      'holder harvest notes',
      'holder variety',
      'holder-mail',
      'former notes',
      'former variety',
      'former holder',
      'payment words',
      'charge words',
      'holder shed',
      'holder bulbs',
      'holder lot remarks',
    ];
    expect(lasts.filter((what) => text.includes(marked(what)))).toEqual([]);
    expect(text).not.toMatch(new RegExp(`\\b${holderLiftedG}\\b`));
  });
});

describe('what is kept beside the records', () => {
  it('the book and the replies hold no contact, note, variety, gate note or name of a member', async () => {
    const kept = await writtenIn(society.id, ['AuditRow', 'WriteOnce']);
    expect(kept).toContain(marked('reason'));
    const never = [
      /own manure/,
      /(shed|bulbs|grown|remarks|cellar)/,
      /mail/,
      /phone/,
      /postal/,
      /notes/,
      /variety/,
      /supplier (name|reach|remarks|thanks)/,
      /gate/,
      /sign-in/,
      /hash/,
      /words/,
      /to pay/,
    ];
    const texts = [...kept.matchAll(new RegExp(`${society.tag}[ -][a-z -]*`, 'g'))].map(([text]) => text);
    expect(texts.filter((text) => never.some((word) => word.test(text)))).toEqual([]);
    const members = await db().member.findMany({ where: { societyId: society.id } });
    expect(members.filter(({ name }) => kept.includes(`"${name.toLowerCase()}"`))).toEqual([]);
  });

  it('mail holds no note and no gate note', async () => {
    const mails = await db().mailMessage.findMany({ where: { societyId: society.id } });
    const text = mails
      .map(({ subject, body }) => `${subject}\n${body}`)
      .join('\n')
      .toLowerCase();
    expect(text).toContain(society.tag);
    expect(text).not.toMatch(new RegExp(`${society.tag} [a-z ]*(gate|notes|variety|phone|postal)`));
  });
});

async function everyAnswer(caller: Caller, ids: ReadonlyMap<string, string>, of = rows): Promise<string> {
  const texts: string[] = [];
  for (const row of of.filter(({ operation }) => operation.kind === 'query'))
    for (const input of everyInput(row, ids)) texts.push((await answerTo(row.operation, caller, input)).text);
  return texts.join('\n');
}

/** A question without its ids, where it may be asked so, and with every id of the society of the kinds that it names. */
function everyInput({ input }: Row, ids: ReadonlyMap<string, string>): object[] {
  const given = input(society.ids);
  const alike = idsNamed(input).flatMap((key) =>
    [...ids]
      .filter(([, table]) => table === ids.get(society.ids[key]))
      .map(([id]) => input({ ...society.ids, [key]: id })),
  );
  return [{}, given, ...alike];
}

type Site = Awaited<ReturnType<typeof readSite.run>>;

function bedIn(read: Site, bedId: string) {
  const beds = 'plan' in read ? read.plan.flatMap((plot) => plot.beds) : [];
  const bed = beds.find(({ id }) => id === bedId);
  if (!bed) throw new Error('the plan lacks the bed');
  return bed;
}
