import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { createPackets, type SeedPacketRecord, updatePacket } from '@/lib/data/seed-packet';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import { plantedCrops } from '@/lib/domain/catalogue/spacings';
import { canEnter } from '@/lib/domain/policy/standing';
import { seedsInMass } from '@/lib/domain/seed/seed-mass';
import { amountTyped, type SeedUnit } from '@/lib/domain/seed/seed-unit';
import { addPacketInput, changePacketInput, packetInput, usePacketInput } from '@/lib/schemas/seed/tin';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { openPacket, openTin } from './open-tin';

const mostSeeds = 100_000;

// A tin is the holding's alone: the book says that something was done, and neither of what nor how much.
function noted({ note }: WriteContext, verb: string, { id, holdingId }: Pick<SeedPacketRecord, 'id' | 'holdingId'>) {
  note({ verb, thing: 'seed packet', thingId: id, forHoldingId: holdingId });
}

// Next year's date stands on what is sold in autumn.
function checkYear({ today }: WriteContext, packedYear: number | null): void {
  const most = yearOf(today) + 1;
  if (packedYear !== null && packedYear > most)
    refuse('packed-in-the-future', { field: 'packedYear', numbers: { most } });
}

type Seeds = { readonly seeds: number; readonly fewest: number; readonly most: number };

/** Seeds as they were typed: counted, or by weight, as the crop's first account has it, with what others make of it. */
function seedsTyped(cropKey: string, unit: SeedUnit, text: string): Seeds {
  const typed = amountTyped(unit, text);
  const most = unit === 'milligrams' ? 9999 : mostSeeds;
  if (!typed) refuse('seed-amount', { field: 'amount', numbers: { unit, most } });
  const read = unit === 'milligrams' ? seedsInMass(cropKey, typed) : { seeds: typed, fewest: typed, most: typed };
  if (read === null) refuse('seed-not-weighed', { field: 'amount' });
  if (read.seeds < 1 || read.seeds > mostSeeds)
    refuse('seed-amount', { field: 'amount', numbers: { unit: 'seeds', most: mostSeeds } });
  return read;
}

/** Put a packet into the tin. */
export const addPacket = mutation({
  name: 'add-seed-packet',
  allow: canEnter,
  input: addPacketInput,
  write: async (context, { holdingId, cropKey, amount, unit, ...facts }) => {
    const { tx, scope, today } = context;
    await openTin({ db: tx, scope, today }, holdingId);
    if (!(await cropsOf(tx, scope)).has(cropKey))
      refuse('crop-unknown', { field: 'cropKey', numbers: { crop: cropKey } });
    if (plantedCrops.cropKeys.some((key) => key === cropKey)) refuse('seed-is-planted', { field: 'cropKey' });
    checkYear(context, facts.packedYear);
    const { variety, packedYear, germinationPercent } = facts;
    const read = seedsTyped(cropKey, unit, amount);
    const packet = { cropKey, seeds: read.seeds, variety, packedYear, germinationPercent, wantId: null };
    const [packetId = ''] = await createPackets(tx, scope, holdingId, [packet]);
    noted(context, 'put into the tin', { id: packetId, holdingId });
    return { packetId, ...read };
  },
});

/** Correct a packet: what is left in it, its variety, its year, or how it came up in a test. */
export const changePacket = mutation({
  name: 'change-seed-packet',
  allow: canEnter,
  input: changePacketInput,
  write: async (context, { packetId, seeds, variety, packedYear, germinationPercent }) => {
    const { tx, scope, now } = context;
    const packet = await openPacket(context, packetId);
    checkYear(context, packedYear);
    const usedUpAt = seeds === 0 ? (packet.usedUpAt ?? now) : null;
    await updatePacket(tx, scope, packetId, { seeds, variety, packedYear, germinationPercent, usedUpAt });
    noted(context, 'corrected', packet);
    return { seeds };
  },
});

/** Use some seed of a packet. */
export const usePacket = mutation({
  name: 'use-seed',
  allow: canEnter,
  input: usePacketInput,
  write: async (context, { packetId, seeds }) => {
    const { tx, scope, now } = context;
    const packet = await openPacket(context, packetId);
    const left = packet.seeds - seeds;
    if (left < 0) refuse('packet-holds-less', { field: 'seeds', numbers: { seeds: packet.seeds } });
    await updatePacket(tx, scope, packetId, { seeds: left, usedUpAt: left === 0 ? now : null });
    noted(context, 'used', packet);
    return { left };
  },
});

/** A packet is used up, whatever was thought to be in it. */
export const finishPacket = mutation({
  name: 'finish-seed-packet',
  allow: canEnter,
  input: packetInput,
  write: async (context, { packetId }) => {
    const { tx, scope, now } = context;
    const packet = await openPacket(context, packetId);
    await updatePacket(tx, scope, packetId, { seeds: 0, usedUpAt: now });
    noted(context, 'used up', packet);
    return { packetId };
  },
});

/** Take a packet back that was put down by mistake. */
export const takeBackPacket = mutation({
  name: 'take-back-seed-packet',
  allow: canEnter,
  input: packetInput,
  write: async (context, { packetId }) => {
    const packet = await openPacket(context, packetId);
    await updatePacket(context.tx, context.scope, packetId, { retiredAt: context.now });
    noted(context, 'taken back', packet);
    return { packetId };
  },
});
