import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type CalendarEntry, calendarFile } from '@/lib/platform/calendar-file';

// IETF, RFC 5545, Internet Calendaring and Scheduling Core Object Specification, 2009, with its errata.
const entry = (change: Partial<CalendarEntry> = {}): CalendarEntry => ({
  ...{ uid: 'round-1@withy-reach', from: '2026-11-28', to: '2026-11-28', title: 'Go over the shed', note: '' },
  ...{ url: 'https://example.org/', sequence: 0, changedAt: new Date('2026-11-01T10:00:00Z'), cancelled: false },
  ...change,
});
const fileOf = (change: Partial<CalendarEntry> = {}) => calendarFile('Withy Reach', [entry(change)]);
const unfolded = (text: string) => text.replaceAll(/\r\n[ \t]/g, '');

describe('3.1, content lines', () => {
  // The section's own example, as a folded line and as it is meant.
  const meant = 'This is a long description that exists on a long line.';

  it('are at most 75 octets without their break, folded between characters, and unfold to what was meant', () => {
    const long = `${meant} `.repeat(8) + 'ß€🌱'.repeat(40);
    const file = fileOf({ note: long, title: 'é'.repeat(200) });
    for (const line of file.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    // A character that is cut in two would not decode.
    for (const line of file.split('\r\n')) expect(line).not.toMatch(/\ufffd/);
    expect(unfolded(file)).toContain(`DESCRIPTION:${long}`);
  });

  it('the published folding unfolds as the parser of the tests has it', () => {
    const folded = 'DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.';
    expect(unfolded(folded)).toBe(`DESCRIPTION:${meant}`);
    const event = ICAL.parse(`BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\n${folded}\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n`);
    expect(new ICAL.Component(event).getFirstSubcomponent('vevent')?.getFirstPropertyValue('description')).toBe(meant);
  });

  it('end in CR LF, every one', () => expect(fileOf().replaceAll('\r\n', '')).not.toMatch(/[\r\n]/));
});

describe('3.3.11, text', () => {
  it.each([
    ['a\\b', 'a\\\\b'],
    ['a;b', 'a\\;b'],
    ['a,b', 'a\\,b'],
    ['a\nb', 'a\\nb'],
    ['a:b "c"', 'a:b "c"'],
  ])('%j is written %s', (title, written) => expect(unfolded(fileOf({ title }))).toContain(`SUMMARY:${written}\r\n`));
});

describe('3.6 and 3.8, an event', () => {
  it('has what it must have: UID, DTSTAMP; the calendar PRODID and VERSION 2.0', () => {
    const file = fileOf();
    for (const line of ['VERSION:2.0', 'UID:round-1@withy-reach', 'DTSTAMP:20261101T100000Z'])
      expect(file).toContain(`${line}\r\n`);
    expect(file).toMatch(/\r\nPRODID:\S+\r\n/);
  });

  it('of whole days begins with a DATE, and ends with the DATE after its last', () => {
    const file = fileOf({ from: '2027-03-27', to: '2027-03-28' });
    expect(file).toContain('DTSTART;VALUE=DATE:20270327\r\n');
    expect(file).toContain('DTEND;VALUE=DATE:20270329\r\n');
  });

  it('says its sequence, and that it is off', () => {
    expect(fileOf({ sequence: 3 })).toContain('SEQUENCE:3\r\n');
    expect(fileOf({ cancelled: true })).toContain('STATUS:CANCELLED\r\n');
    expect(fileOf()).toContain('STATUS:CONFIRMED\r\n');
  });

  it('is read back by another parser as it was meant, whatever stands in it', () => {
    const change = {
      title: 'Onions; “long, keeping” \\ 🧅',
      note: 'One\ntwo: three',
      from: '2028-02-29',
      to: '2028-03-01',
    };
    const read = new ICAL.Component(ICAL.parse(fileOf({ ...change, sequence: 2 }))).getFirstSubcomponent('vevent');
    if (!read) throw new Error('no event');
    const event = new ICAL.Event(read);
    expect([event.summary, event.description, event.sequence]).toEqual([change.title, change.note, 2]);
    expect([event.startDate.isDate, event.startDate.toString(), event.endDate.toString()]).toEqual([
      ...[true, '2028-02-29', '2028-03-02'],
    ]);
  });
});
