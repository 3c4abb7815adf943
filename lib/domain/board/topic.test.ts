import { describe, expect, it } from 'vitest';
import { topicsNamed, topicTyped, typedTopic } from './topic';

const id = '0190e2a4-1111-7000-8000-000000000001';
const other = '0190e2a4-1111-7000-8000-000000000002';

describe('what a thread is about', () => {
  it.each(['crop:onion', 'trouble:white-rot', 'date:2026-12-05', `bed:${id}`, `delivery:${id}`])('%s', (typed) => {
    const topic = topicTyped(typed);
    expect(topic && typedTopic(topic)).toBe(typed);
  });

  it.each(['', 'crop', 'crop:', 'plot:7', 'bed:7', `delivery:${id}0`, '__proto__:x', 'onion'])(
    '%j names nothing',
    (typed) => expect(topicTyped(typed)).toBeNull(),
  );
});

describe('what posts link to', () => {
  it('are deliveries and beds of the society, each once, in the order of the words', () => {
    const bodies = [`https://x.org/reach/deliveries/${id} and /reach/ground/beds/${other}.`, `/reach/deliveries/${id}`];
    expect(topicsNamed(bodies, 'reach')).toEqual([
      { kind: 'delivery', key: id },
      { kind: 'bed', key: other },
    ]);
  });

  it('are what beds gave too, by what the address asks of a crop, in whatever order', () => {
    const bodies = [
      'https://x.org/reach/board/results?by=digging&crop=onion&season=2026.',
      '/reach/board/results?crop=onion&amp;season=2026&amp;by=digging&amp;page=7',
      '/reach/board/results?season=2026 and /reach/board/results and /other/board/results?crop=leek',
    ];
    expect(topicsNamed(bodies, 'reach')).toEqual([{ kind: 'results', key: 'crop=onion&season=2026&by=digging' }]);
  });

  it('are not those of another society, nor other pages', () => {
    expect(topicsNamed([`/other/deliveries/${id}`, `/reach/money/${id}`, '/reach/deliveries/new'], 'reach')).toEqual(
      [],
    );
    expect(topicsNamed([`/reach/deliveries/${id}`], '.*')).toEqual([]);
  });
});
