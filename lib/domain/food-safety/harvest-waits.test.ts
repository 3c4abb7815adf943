import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { footprint } from '../ground/footprint';
import { type GrownCrop, harvestWaits, type ManuringRecord } from './harvest-waits';

const day = calendarDate;
const today = day('2026-11-25');
const ground = footprint(0, 0, 300, 400);
const carrots: GrownCrop = {
  id: 'carrots',
  cropKey: 'carrot',
  footprint: ground,
  firstSeason: 2027,
  lastSeason: 2027,
  begunOn: null,
  clearedOn: null,
};
const manure: ManuringRecord = {
  id: 'manure',
  footprint: ground,
  season: 2027,
  doneOn: day('2026-11-10'),
  materialKey: 'horse-manure',
  ageMonths: 4,
  incorporated: true,
};
const waits = (crop: Partial<GrownCrop> = {}, work: Partial<ManuringRecord> = {}, on = today) =>
  harvestWaits([{ ...carrots, ...crop }], [{ ...manure, ...work }], on);
const until = (...given: Parameters<typeof waits>) => waits(...given)[0]?.earliestOn;

describe('a harvest that has to wait', () => {
  it('waits by the strictest rule for what touches the soil and is eaten raw', () => {
    const [wait] = waits();
    expect(wait).toMatchObject({
      plantingId: 'carrots',
      earliestOn: '2027-07-10',
      whileGrowing: false,
      areaCm2: 120_000,
      meeting: { contact: 'touches-soil', eaten: 'either' },
      manurings: [
        { id: 'manure', manuredOn: '2026-11-10', isDayKnown: true, state: 'young', decidedBy: 'year-of-rot' },
      ],
    });
    expect(wait?.manurings[0]?.rules.map(({ key }) => key)).toContain('organic-contact');
  });

  it('waits less for what hangs clear and is cooked, and longest for manure of which nobody knows the age', () => {
    expect(until({ cropKey: 'runner-bean', begunOn: day('2026-11-01') })).toBe('2027-02-08');
    expect(until({}, { ageMonths: null })).toBe('2027-11-10');
    expect(until({ cropKey: 'nobody-knows' })).toBe('2027-07-10');
  });

  it('counts from the latest day that it can have been where none is on record', () => {
    expect(waits({}, { doneOn: null })[0]).toMatchObject({
      earliestOn: '2027-07-25',
      manurings: [{ isDayKnown: false, manuredOn: '2026-11-25' }],
    });
  });

  it('is the worst case where neither day nor age is on record', () => {
    const worst = (work: Partial<ManuringRecord>) => waits({}, work)[0]?.isWorstCase;
    expect(worst({ doneOn: null, ageMonths: null })).toBe(true);
    expect(worst({ doneOn: null })).toBe(false);
    expect(worst({ ageMonths: null })).toBe(false);
    const both = [
      { ...manure, doneOn: null, ageMonths: null },
      { ...manure, id: 'fresh', doneOn: today, ageMonths: 0 },
    ];
    expect(harvestWaits([carrots], both, today)[0]).toMatchObject({ isWorstCase: false, earliestOn: '2027-11-25' });
  });

  it('is over on its day', () => {
    expect(waits({}, {}, day('2027-07-09'))).toHaveLength(1);
    expect(waits({}, {}, day('2027-07-10'))).toEqual([]);
  });

  it('tells of rotted manure on ground still to be sown where the wait reaches into summer', () => {
    const inSpring = (doneOn: string) => waits({}, { ageMonths: 12, doneOn: day(doneOn) }, day('2027-04-15'));
    expect(inSpring('2027-01-01')).toEqual([]);
    expect(inSpring('2027-01-02')).toHaveLength(1);
    expect(inSpring('2027-04-10')).toMatchObject([{ earliestOn: '2027-08-08', manurings: [{ state: 'rotted' }] }]);
  });

  it('says nothing of rotted manure dug in before winter, until the crop is begun; and of compost only for what is eaten raw', () => {
    expect(waits({}, { ageMonths: 12 })).toEqual([]);
    expect(waits({}, { ageMonths: 11 })).toHaveLength(1);
    const begun = { begunOn: day('2026-11-01') };
    expect(waits(begun, { ageMonths: 12 })[0]).toMatchObject({ earliestOn: '2027-03-10', whileGrowing: true });
    expect(waits(begun, { materialKey: 'green-compost' })[0]).toMatchObject({
      earliestOn: '2027-01-10',
      whileGrowing: false,
    });
    expect(waits(begun, { materialKey: 'straw' })).toEqual([]);
  });

  it('is none for a crop whose year comes after it, or which was lifted before', () => {
    expect(waits({ firstSeason: 2028, lastSeason: 2028 })).toEqual([]);
    expect(waits({ firstSeason: 2026, lastSeason: 2026 })).toEqual([]);
    expect(waits({ firstSeason: 2026, lastSeason: 2026 }, { incorporated: false })).toHaveLength(1);
    expect(waits({ clearedOn: day('2026-11-10') })).toEqual([]);
    expect(waits({ clearedOn: day('2026-11-11') })).toHaveLength(1);
  });

  it('is none on other ground, for green manures, and without manure', () => {
    expect(waits({}, { footprint: footprint(0, 400, 300, 100) })).toEqual([]);
    expect(waits({ cropKey: 'phacelia' })).toEqual([]);
    expect(harvestWaits([carrots], [], today)).toEqual([]);
    expect(harvestWaits([], [manure], today)).toEqual([]);
  });

  it('gathers several manurings, with the ground that they touch', () => {
    const works = [
      { ...manure, footprint: footprint(0, 0, 300, 100) },
      { ...manure, id: 'later', doneOn: day('2026-11-20'), footprint: footprint(0, 100, 300, 100) },
    ];
    const [wait] = harvestWaits([carrots], works, today);
    expect(wait).toMatchObject({ earliestOn: '2027-07-20', areaCm2: 60_000 });
    expect(wait?.manurings.map(({ id }) => id)).toEqual(['manure', 'later']);
  });
});
