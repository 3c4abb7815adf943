import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { curingClock } from '@/lib/domain/store/curing-clock';
import { tooColdFor } from '@/lib/domain/store/too-cold';
import {
  apartWords,
  curingWords,
  enoughWords,
  foundWords,
  lotName,
  percentWords,
  rangeWords,
  roundWords,
  tenthsTyped,
  firstReasonWords,
  warmthWords,
} from './store-words';

const day = (text: string) => text as CalendarDate;
const due = { isDue: true, daysLate: 0, missedRounds: 0, dueOn: '2026-11-15' };

describe('the store in words', () => {
  it('names a lot by what it is and which', () => {
    expect(lotName({ keepingKey: 'onion', variety: 'Sturon' })).toBe('Onions, Sturon');
    expect(lotName({ keepingKey: 'onion', variety: null })).toBe('Onions');
  });

  it.each([
    [due, 'due today'],
    [{ ...due, daysLate: 1 }, '1 day late'],
    [{ ...due, daysLate: 14, missedRounds: 1 }, '14 days late, 1 round missed'],
    [{ ...due, daysLate: 30, missedRounds: 2 }, '30 days late, 2 rounds missed'],
    [{ ...due, isDue: false }, 'next on Sun, 15 November 2026'],
  ])('says how a round stands', (round, words) => expect(roundWords(round)).toBe(words));

  it('says what was found, and leaves out what was not', () => {
    const found = { sound: 53, used: 5, bad: 2, badWhy: 'mould' } as const;
    expect(foundWords(found, 'pieces', 'metric')).toBe('53 sound, 5 used, 2 bad (mould)');
    expect(foundWords({ sound: 4500, used: 0, bad: 0, badWhy: null }, 'grams', 'metric')).toBe('4.5 kg sound');
  });

  it('says why something is used first, with its numbers', () => {
    const useBy = { leastDays: 1, medianDays: 9, mostDays: 20 };
    expect(firstReasonWords({ code: 'near-end', ...useBy })).toContain('within 9 days');
    expect(firstReasonWords({ code: 'near-end', ...useBy, medianDays: 0 })).toContain('past its time');
    expect(firstReasonWords({ code: 'losing-fast', badPieces: 7, usualPieces: 2.14 })).toContain(
      '7 went bad, where 2.1',
    );
  });

  it('says how a curing stands on each side of its days', () => {
    const on = (today: string) => curingWords(curingClock('onion', day('2026-08-01'), day(today)) ?? ({} as never));
    expect(on('2026-08-11')).toBe('day 10; ready from Sat, 15 August 2026, by Fri, 21 August 2026 at the latest');
    expect(on('2026-08-15')).toContain('ready to be put away');
    expect(on('2026-08-22')).toContain('too long');
  });

  it('never gives a bare day for what is not known', () => {
    expect(rangeWords({ least: '2027-01-02', median: '2027-02-03', most: null })).toBe(
      'between Sat, 2 January 2027 and some day beyond three years; about as likely as not by Wed, 3 February 2027',
    );
    expect(rangeWords({ least: null, median: null, most: null })).toBe('not within three years');
    expect(rangeWords({ least: '2027-01-02', median: '2027-01-02', most: '2027-01-02' })).toContain('as far as');
  });

  it.each([
    [1000, 'a hundred cases of a hundred'],
    [999, '99 cases of a hundred'],
    [864, '86 cases of a hundred'],
    [1, '1 case of a hundred'],
    [0, '0 cases of a hundred'],
  ])('tells %i in a thousand', (permille, words) => expect(percentWords(permille)).toBe(words));

  it('gives the reason of an answer', () => {
    expect(enoughWords({ answer: 'cannot-tell', likelyPermille: null, reason: 'use-unknown' })).toMatch(
      /Nobody has said/,
    );
    expect(enoughWords({ answer: 'no', likelyPermille: 0, reason: 'likely-too-little' })).toMatch(/^Nothing is left/);
    expect(enoughWords({ answer: 'no', likelyPermille: 12, reason: 'likely-too-little' })).toMatch(/Only in 1 case/);
  });

  it('says what is too cold with both degrees, and what harms what', () => {
    const [chilled] = tooColdFor('butternut', 60);
    expect(warmthWords(chilled ?? ({} as never))).toBe(
      'Cold harms it, frost or none, below 10 °C; here it gets down to 6 °C.',
    );
    expect(apartWords({ code: 'ethylene' }, 'Carrots', 'Apples')).toContain('spoils carrots');
  });

  it('gives back tenths as they are typed', () => expect([tenthsTyped(25), tenthsTyped(null)]).toEqual(['2.5', '']));
});
