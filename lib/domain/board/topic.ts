/** What a thread is about: the site’s own things. */
export const topicKinds = ['crop', 'bed', 'delivery', 'trouble', 'date'] as const;
export type TopicKind = (typeof topicKinds)[number];
export type Topic = { readonly kind: TopicKind; readonly key: string };
/** What a post links to: a topic, or what beds gave, named by what its address asks. */
export type Named = Topic | { readonly kind: 'results'; readonly key: string };

// Rows are named by their ids, everything else by its key.
const uuid = '[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}';
const mostResults = 5;
const isId = new RegExp(`^${uuid}$`);

/**
 * A topic as a form carries it: the kind, a colon, its key.
 *
 * @returns null where it names no topic
 * @example 'crop:onion' → { kind: 'crop', key: 'onion' }
 */
export function topicTyped(typed: string): Topic | null {
  const [kind = '', ...key] = typed.split(':');
  const known = topicKinds.find((one) => one === kind);
  const named = key.join(':');
  const isRow = known === 'bed' || known === 'delivery';
  return known && named && (!isRow || isId.test(named)) ? { kind: known, key: named } : null;
}

/** The same the other way. */
export function typedTopic({ kind, key }: Named): string {
  return `${kind}:${key}`;
}

/**
 * The things of the site that posts link to: deliveries, beds, and what beds gave, by their addresses.
 *
 * @param bodies  as they were typed
 * @param slug    the society’s part of every address
 * @returns       each once, in the order in which they are first named; what beds gave five times at most, since each is worked out anew
 * @example       'see /withy-reach/deliveries/0190…' → [{ kind: 'delivery', key: '0190…' }]
 */
export function topicsNamed(bodies: readonly string[], slug: string): Named[] {
  const places = `(?:(deliveries)|ground/beds)/(${uuid})|board/results\\?([\\w%=&;+.~-]{1,300})`;
  const address = new RegExp(`/${slug.replaceAll(/[^\w-]/g, '')}/(?:${places})`, 'g');
  const found = bodies.flatMap((body) =>
    [...body.matchAll(address)].flatMap(([, isDelivery, id, asked]): Named[] => {
      if (asked !== undefined) return askedOf(asked);
      return id === undefined ? [] : [{ kind: isDelivery ? 'delivery' : 'bed', key: id }];
    }),
  );
  const each = [...new Map(found.map((topic) => [typedTopic(topic), topic])).values()];
  const told = each.filter(({ kind }) => kind === 'results').slice(0, mostResults);
  return each.filter((topic) => topic.kind !== 'results' || told.includes(topic));
}

// What is asked, in one order and without anything else that hangs on the address: a crop must be named.
function askedOf(query: string): Named[] {
  const given = new URLSearchParams(query.replaceAll('&amp;', '&').replace(/[.;]+$/, ''));
  const kept = ['crop', 'season', 'by', 'variety'].flatMap((name) => {
    const value = given.get(name);
    return value ? [[name, value]] : [];
  });
  return kept[0]?.[0] === 'crop' ? [{ kind: 'results', key: new URLSearchParams(kept).toString() }] : [];
}
