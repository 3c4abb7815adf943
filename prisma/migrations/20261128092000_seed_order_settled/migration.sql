-- An order is planned before lists open, and knows the entry that it was charged by.
ALTER TABLE "SeedOrder" ADD COLUMN "entryId" UUID, ALTER COLUMN "state" SET DEFAULT 'planned';

CREATE INDEX "SeedOrder_entryId_societyId_idx" ON "SeedOrder"("entryId", "societyId");

ALTER TABLE "SeedOrder" ADD CONSTRAINT "SeedOrder_entryId_societyId_fkey" FOREIGN KEY ("entryId", "societyId") REFERENCES "LedgerEntry"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "SeedOrder" DROP CONSTRAINT seed_order_state;
ALTER TABLE "SeedOrder" ADD CONSTRAINT seed_order_state CHECK ("state" IN ('planned', 'open', 'closed', 'ordered', 'arrived', 'settled', 'called-off') AND "extraMinor" >= 0);
-- Charged once, and charged by something.
ALTER TABLE "SeedOrder" ADD CONSTRAINT seed_order_charged CHECK ("entryId" IS NULL OR "state" = 'settled');
-- No more comes than was ordered.
ALTER TABLE "SeedPack" ADD CONSTRAINT seed_pack_came CHECK ("arrived" IS NULL OR "arrived" <= "ordered");
-- Nobody is given more than they wanted.
ALTER TABLE "SeedWant" ADD CONSTRAINT seed_want_given CHECK ("given" IS NULL OR "given" <= "amount");
