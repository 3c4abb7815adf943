import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { chanceOf } from '../chance';
import { makeDeliveries } from './deliveries';
import { idsOf } from './ids';
import type { Row, Tables } from './insert';

/** How much of everything a society has. */
export type Size = { readonly plots: number; readonly beds: number; readonly seasons: number };

/** One crop of each group, in the order of the course. */
const course = ['onion', 'kale', 'runner-bean', 'carrot', 'maincrop-potato', 'winter-squash'] as const;
const plotWidthCm = 900;
const bed = { widthCm: 780, lengthCm: 200, pathCm: 60 };

/** The nth society, whole: the same for the same size, day and nth. Its first member is the secretary. */
export function makeLargeSociety(nth: number, size: Size, today: CalendarDate, passwordHash: string): Tables {
  const chance = chanceOf(nth);
  const id = idsOf(chance);
  const year = Number(today.slice(0, 4));
  const societyId = id();
  const siteId = id();
  const fromOn = `${year - size.seasons}-01-01`;
  const lengthCm = 160 + size.beds * (bed.lengthCm + bed.pathCm);
  const plots = Array.from({ length: size.plots }, (_, at) => ({
    at,
    plotId: id(),
    frameId: id(),
    holdingId: id(),
    memberId: id(),
    accountId: id(),
    beds: Array.from({ length: size.beds }, (__, row) => ({
      bedId: id(),
      footprint: {
        xCm: 60,
        yCm: 100 + row * (bed.lengthCm + bed.pathCm),
        widthCm: bed.widthCm,
        lengthCm: bed.lengthCm,
      },
    })),
  }));
  const own = { societyId };
  const ground = plots.flatMap((plot) => plot.beds.map((one, row) => ({ ...plot, ...one, row })));
  const plantings = ground.flatMap(({ frameId, bedId, holdingId, footprint, at, row }) =>
    Array.from({ length: size.seasons }, (_, back): Row => {
      const season = year - back;
      // Most keep the course; now and then somebody grows what they like.
      const cropKey = chance.next() < 0.1 ? chance.one(course) : course[(at + row + season) % course.length];
      const seasons = { firstSeason: season, lastSeason: season };
      return { id: id(), ...own, frameId, bedId, holdingId, cropKey, ...footprint, ...seasons, planned: false };
    }),
  );
  const members = plots.map(({ memberId, at }) => ({ memberId, name: `Grower ${at + 1}` }));
  const secretaryId = members[0]?.memberId ?? '';
  const written = (row: Row, at: number) => ({
    id: id(),
    ...own,
    at: `${addDays(today, -(at % (365 * size.seasons)))}T12:00:00Z`,
    actorMemberId: members[at % members.length]?.memberId,
    actorRoles: [],
    forHoldingId: row.holdingId,
    verb: 'recorded',
    thing: 'planting',
    thingId: row.id,
    after: { crop: row.cropKey, season: row.firstSeason },
  });
  return {
    Society: [{ id: societyId, slug: `society-${nth}`, name: `Society ${nth}` }],
    Site: [{ id: siteId, ...own, name: 'The site' }],
    Account: plots.map(({ accountId, at }) => ({ id: accountId, email: emailOf(nth, at + 1), passwordHash })),
    Member: plots.map(({ memberId, accountId, at }) => ({
      id: memberId,
      ...own,
      accountId,
      name: `Grower ${at + 1}`,
      email: emailOf(nth, at + 1),
      joinedOn: fromOn,
    })),
    MemberRole: [{ ...own, memberId: secretaryId, role: 'secretary' }],
    Frame: plots.map(({ frameId, at }) => ({
      id: frameId,
      ...own,
      siteId,
      originXCm: (at % 10) * (plotWidthCm + 60),
      originYCm: Math.floor(at / 10) * (lengthCm + 300),
    })),
    Plot: plots.map(({ plotId, frameId, at }) => ({
      id: plotId,
      ...own,
      siteId,
      frameId,
      number: String(at + 1),
      polygon: [
        [0, 0],
        [plotWidthCm, 0],
        [plotWidthCm, lengthCm],
        [0, lengthCm],
      ],
      areaCm2: plotWidthCm * lengthCm,
      fromOn,
    })),
    Bed: ground.map(({ bedId, plotId, frameId, footprint, row }) => ({
      id: bedId,
      ...own,
      plotId,
      frameId,
      name: String(row + 1),
      ...footprint,
      fromOn,
    })),
    Holding: plots.map(({ holdingId }) => ({ id: holdingId, ...own })),
    HoldingMember: plots.map(({ holdingId, memberId }) => ({ id: id(), ...own, holdingId, memberId, fromOn })),
    Tenancy: plots.map(({ holdingId, plotId }) => ({ id: id(), ...own, holdingId, plotId, fromOn })),
    Planting: plantings,
    GroundWork: ground.map(({ frameId, holdingId, footprint, row }) => ({
      id: id(),
      ...own,
      frameId,
      holdingId,
      ...footprint,
      materialKey: 'horse-manure',
      season: year - (row % 3),
    })),
    ...makeDeliveries({ chance, id, societyId, siteId, secretaryId, holdings: plots, seasons: size.seasons, today }),
    AuditRow: plantings.map(written),
  };
}

/** The address by which the grower of a plot signs in. */
function emailOf(society: number, plot: number): string {
  return `grower-${plot}@society-${society}.example.org`;
}
