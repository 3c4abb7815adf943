import { encode } from 'next-auth/jwt';
import pg from 'pg';
import { sessionSecret } from './service';

/** A member with a plot, signed in. */
export type Visitor = {
  readonly slug: string;
  readonly cookie: string;
  readonly plotId: string;
  /** The delivery of their society that takes bookings. */
  readonly deliveryId: string;
  readonly isSecretary: boolean;
};

/** Members of a database, the nth of every society before the next: so many, spread evenly. */
export async function visitorsOf(databaseUrl: string, count: number): Promise<Visitor[]> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  const { rows } = await client.query(
    `SELECT s."slug", m."accountId", t."plotId", d."id" AS "deliveryId", r."role" IS NOT NULL AS "isSecretary",
       row_number() OVER (PARTITION BY s."id" ORDER BY r."role" NULLS LAST, m."id") AS nth
     FROM "Member" m JOIN "Society" s ON s."id" = m."societyId"
     JOIN "HoldingMember" h ON h."memberId" = m."id" JOIN "Tenancy" t ON t."holdingId" = h."holdingId"
     JOIN "Delivery" d ON d."societyId" = s."id" AND d."state" = 'open'
     LEFT JOIN "MemberRole" r ON r."memberId" = m."id" ORDER BY nth, s."slug" LIMIT $1`,
    [count],
  );
  await client.end();
  return Promise.all(
    rows.map(async ({ accountId, ...row }) => {
      const token = { sub: accountId, version: 1 };
      return { ...row, cookie: `barrowmoot=${await encode({ token, secret: sessionSecret })}` };
    }),
  );
}

/** The pages people open most, each as one visitor's address of it. */
export const mainPages: readonly {
  readonly name: string;
  readonly pathFor: (visitor: Visitor) => string;
  readonly forSecretary?: boolean;
}[] = [
  { name: 'This week', pathFor: ({ slug }) => `/${slug}` },
  { name: 'My ground', pathFor: ({ slug }) => `/${slug}/ground` },
  { name: 'Deliveries', pathFor: ({ slug }) => `/${slug}/deliveries` },
  { name: 'One delivery', pathFor: ({ slug, deliveryId }) => `/${slug}/deliveries/${deliveryId}` },
  { name: 'Site plan', pathFor: ({ slug }) => `/${slug}/site` },
  { name: 'The book', pathFor: ({ slug }) => `/${slug}/office/book`, forSecretary: true },
];

/** Who opens a page on a connection. */
export function visitorOf(visitors: readonly Visitor[], forSecretary: boolean | undefined, nth: number): Visitor {
  const able = visitors.filter(({ isSecretary }) => isSecretary === (forSecretary ?? false));
  const visitor = able[nth % able.length];
  if (!visitor) throw new Error('nobody can open this page');
  return visitor;
}
