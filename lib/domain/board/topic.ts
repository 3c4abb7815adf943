/** What a thread is about: the site’s own things. */
export const topicKinds = ['crop', 'bed', 'delivery', 'trouble', 'date'] as const;
export type TopicKind = (typeof topicKinds)[number];
export type Topic = { readonly kind: TopicKind; readonly key: string };

// Rows are named by their ids, everything else by its key.
const uuid = '[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}';
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
export function typedTopic({ kind, key }: Topic): string {
  return `${kind}:${key}`;
}

/**
 * The things of the site that posts link to: deliveries and beds, by their addresses.
 *
 * @param bodies  as they were typed
 * @param slug    the society’s part of every address
 * @returns       each once, in the order in which they are first named
 * @example       'see /withy-reach/deliveries/0190…' → [{ kind: 'delivery', key: '0190…' }]
 */
export function topicsNamed(bodies: readonly string[], slug: string): Topic[] {
  const address = new RegExp(`/${slug.replaceAll(/[^\w-]/g, '')}/(?:(deliveries)|ground/beds)/(${uuid})`, 'g');
  const found = bodies.flatMap((body) =>
    [...body.matchAll(address)].map(
      ([, isDelivery, key = '']): Topic => ({
        kind: isDelivery ? 'delivery' : 'bed',
        key,
      }),
    ),
  );
  return [...new Map(found.map((topic) => [typedTopic(topic), topic])).values()];
}
