-- AlterTable
ALTER TABLE "Booking" ADD COLUMN     "fromStanding" BOOLEAN NOT NULL DEFAULT false,
ADD COLUMN     "lateAt" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "Delivery" ADD COLUMN     "baleMassG" INTEGER,
ADD COLUMN     "cultivableSharePercent" INTEGER NOT NULL DEFAULT 75,
ADD COLUMN     "dropPointId" UUID,
ADD COLUMN     "intervalYears" INTEGER NOT NULL DEFAULT 3,
ADD COLUMN     "loadUnit" TEXT NOT NULL DEFAULT 'barrow',
ADD COLUMN     "supplierId" UUID,
ADD COLUMN     "thanks" TEXT,
ADD COLUMN     "togetherId" UUID;

-- CreateTable
CREATE TABLE "StandingBooking" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "serves" TEXT NOT NULL,
    "autumnOnly" BOOLEAN NOT NULL DEFAULT true,
    "mostLoads" INTEGER,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "endedAt" TIMESTAMPTZ(3),

    CONSTRAINT "StandingBooking_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HeapLook" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "deliveryId" UUID NOT NULL,
    "loads" INTEGER NOT NULL,
    "byMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "HeapLook_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Supplier" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "reach" TEXT,
    "notes" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "Supplier_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SupplierLoad" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "supplierId" UUID NOT NULL,
    "materialKey" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "trailerLitres" INTEGER,
    "baleMassG" INTEGER,
    "densityGPerL" INTEGER,
    "priceMinor" INTEGER,
    "thanks" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "SupplierLoad_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "DropPoint" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "DropPoint_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SitePath" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "name" TEXT,
    "points" JSONB NOT NULL,
    "lorry" TEXT NOT NULL DEFAULT 'none',
    "lorryFromCm" INTEGER,
    "lorryToCm" INTEGER,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "SitePath_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LedgerEntry" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "on" DATE NOT NULL,
    "kind" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "deliveryId" UUID,
    "reversesId" UUID,
    "madeByMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "LedgerEntry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LedgerLine" (
    "societyId" UUID NOT NULL,
    "entryId" UUID NOT NULL,
    "account" TEXT NOT NULL,
    "holdingId" UUID,
    "minor" BIGINT NOT NULL,

    CONSTRAINT "LedgerLine_pkey" PRIMARY KEY ("entryId","account")
);

-- CreateTable
CREATE TABLE "LedgerAccount" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "LedgerAccount_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "StandingBooking_societyId_holdingId_idx" ON "StandingBooking"("societyId", "holdingId");

-- CreateIndex
CREATE UNIQUE INDEX "StandingBooking_id_societyId_key" ON "StandingBooking"("id", "societyId");

-- CreateIndex
CREATE INDEX "HeapLook_deliveryId_societyId_at_idx" ON "HeapLook"("deliveryId", "societyId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "HeapLook_id_societyId_key" ON "HeapLook"("id", "societyId");

-- CreateIndex
CREATE INDEX "Supplier_societyId_name_idx" ON "Supplier"("societyId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Supplier_id_societyId_key" ON "Supplier"("id", "societyId");

-- CreateIndex
CREATE INDEX "SupplierLoad_supplierId_societyId_idx" ON "SupplierLoad"("supplierId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SupplierLoad_id_societyId_key" ON "SupplierLoad"("id", "societyId");

-- CreateIndex
CREATE INDEX "DropPoint_siteId_societyId_idx" ON "DropPoint"("siteId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "DropPoint_id_societyId_key" ON "DropPoint"("id", "societyId");

-- CreateIndex
CREATE INDEX "SitePath_siteId_societyId_idx" ON "SitePath"("siteId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SitePath_id_societyId_key" ON "SitePath"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "LedgerEntry_reversesId_key" ON "LedgerEntry"("reversesId");

-- CreateIndex
CREATE INDEX "LedgerEntry_societyId_on_idx" ON "LedgerEntry"("societyId", "on");

-- CreateIndex
CREATE INDEX "LedgerEntry_deliveryId_societyId_idx" ON "LedgerEntry"("deliveryId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "LedgerEntry_id_societyId_key" ON "LedgerEntry"("id", "societyId");

-- CreateIndex
CREATE INDEX "LedgerLine_societyId_account_idx" ON "LedgerLine"("societyId", "account");

-- CreateIndex
CREATE INDEX "LedgerLine_holdingId_societyId_idx" ON "LedgerLine"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "LedgerAccount_societyId_key_key" ON "LedgerAccount"("societyId", "key");

-- CreateIndex
CREATE INDEX "Delivery_societyId_togetherId_idx" ON "Delivery"("societyId", "togetherId");

-- AddForeignKey
ALTER TABLE "Delivery" ADD CONSTRAINT "Delivery_supplierId_societyId_fkey" FOREIGN KEY ("supplierId", "societyId") REFERENCES "Supplier"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Delivery" ADD CONSTRAINT "Delivery_dropPointId_societyId_fkey" FOREIGN KEY ("dropPointId", "societyId") REFERENCES "DropPoint"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StandingBooking" ADD CONSTRAINT "StandingBooking_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HeapLook" ADD CONSTRAINT "HeapLook_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Supplier" ADD CONSTRAINT "Supplier_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SupplierLoad" ADD CONSTRAINT "SupplierLoad_supplierId_societyId_fkey" FOREIGN KEY ("supplierId", "societyId") REFERENCES "Supplier"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "DropPoint" ADD CONSTRAINT "DropPoint_siteId_societyId_fkey" FOREIGN KEY ("siteId", "societyId") REFERENCES "Site"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SitePath" ADD CONSTRAINT "SitePath_siteId_societyId_fkey" FOREIGN KEY ("siteId", "societyId") REFERENCES "Site"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_reversesId_societyId_fkey" FOREIGN KEY ("reversesId", "societyId") REFERENCES "LedgerEntry"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerLine" ADD CONSTRAINT "LedgerLine_entryId_societyId_fkey" FOREIGN KEY ("entryId", "societyId") REFERENCES "LedgerEntry"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerLine" ADD CONSTRAINT "LedgerLine_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerAccount" ADD CONSTRAINT "LedgerAccount_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



-- Deliveries that were there before keep the rules that were in force when they were planned.
UPDATE "Delivery" d SET
  "intervalYears" = coalesce((SELECT (s."value" #>> '{}')::int FROM "SocietySetting" s
    WHERE s."societyId" = d."societyId" AND s."key" = 'manuringIntervalYears' AND s."effectiveFrom" <= d."createdAt"::date
    ORDER BY s."effectiveFrom" DESC, s."setAt" DESC LIMIT 1), 3),
  "cultivableSharePercent" = coalesce((SELECT (s."value" #>> '{}')::int FROM "SocietySetting" s
    WHERE s."societyId" = d."societyId" AND s."key" = 'cultivableSharePercent' AND s."effectiveFrom" <= d."createdAt"::date
    ORDER BY s."effectiveFrom" DESC, s."setAt" DESC LIMIT 1), 75);

-- ---- deliveries, bookings and heaps ------------------------------------------------------------------------
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_load CHECK (
  "loadUnit" IN ('barrow', 'bale') AND ("loadUnit" = 'bale') = ("baleMassG" IS NOT NULL) AND coalesce("baleMassG", 1) > 0);
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_rules CHECK ("intervalYears" > 0 AND "cultivableSharePercent" BETWEEN 1 AND 100);
ALTER TABLE "StandingBooking" ADD CONSTRAINT standing_serves CHECK ("serves" IN ('manure', 'straw') AND coalesce("mostLoads", 1) > 0);
CREATE UNIQUE INDEX standing_once ON "StandingBooking" ("holdingId", "serves") WHERE "endedAt" IS NULL;
ALTER TABLE "HeapLook" ADD CONSTRAINT look_loads CHECK ("loads" >= 0);
CREATE TRIGGER look_written_once BEFORE UPDATE OR DELETE ON "HeapLook" FOR EACH ROW EXECUTE FUNCTION written_once();
ALTER TABLE "SupplierLoad" ADD CONSTRAINT supplier_load_unit CHECK (
  "unit" IN ('trailer', 'm3', 'tonnes', 'bales')
  AND ("unit" = 'trailer') = ("trailerLitres" IS NOT NULL) AND ("unit" = 'bales') = ("baleMassG" IS NOT NULL)
  AND coalesce("trailerLitres", 1) > 0 AND coalesce("baleMassG", 1) > 0 AND coalesce("densityGPerL", 1) > 0 AND coalesce("priceMinor", 0) >= 0);
ALTER TABLE "SitePath" ADD CONSTRAINT path_lorry CHECK (
  "lorry" IN ('whole', 'none', 'part')
  AND ("lorry" = 'part') = ("lorryFromCm" IS NOT NULL AND "lorryToCm" IS NOT NULL)
  AND coalesce("lorryFromCm", 0) >= 0 AND coalesce("lorryToCm", 1) > coalesce("lorryFromCm", 0));

-- ---- money: every entry balances, and none is ever changed -------------------------------------------------
ALTER TABLE "LedgerEntry" ADD CONSTRAINT ledger_kind CHECK (("kind" = 'correction') = ("reversesId" IS NOT NULL));
ALTER TABLE "LedgerLine" ADD CONSTRAINT ledger_line CHECK (
  "minor" <> 0 AND abs("minor") <= 1000000000000
  AND "account" ~ '^(bank|cash|(holding|purchases|other):[^[:space:]:]+)$'
  AND ("account" LIKE 'holding:%') = ("holdingId" IS NOT NULL)
  AND ("holdingId" IS NULL OR "account" = 'holding:' || "holdingId"::text));
CREATE TRIGGER ledger_entry_written_once BEFORE UPDATE OR DELETE ON "LedgerEntry" FOR EACH ROW EXECUTE FUNCTION written_once();
CREATE TRIGGER ledger_line_written_once BEFORE UPDATE OR DELETE ON "LedgerLine" FOR EACH ROW EXECUTE FUNCTION written_once();

-- When a transaction ends, each entry it touched sums to nothing and moves something; a correction is the entry it takes
-- back with every sign turned.
CREATE FUNCTION ledger_balances() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE entry uuid; total numeric; lines int; taken uuid;
BEGIN
  IF TG_TABLE_NAME = 'LedgerEntry' THEN entry := NEW."id"; ELSE entry := NEW."entryId"; END IF;
  SELECT coalesce(sum("minor"), 0), count(*) INTO total, lines FROM "LedgerLine" WHERE "entryId" = entry;
  IF total <> 0 OR lines < 2 THEN
    RAISE EXCEPTION 'ledger entry % has % lines that sum to %', entry, lines, total USING ERRCODE = 'check_violation', CONSTRAINT = 'ledger_balances';
  END IF;
  SELECT "reversesId" INTO taken FROM "LedgerEntry" WHERE "id" = entry;
  IF taken IS NOT NULL AND EXISTS (
    SELECT 1 FROM (SELECT * FROM "LedgerLine" WHERE "entryId" = entry) a
      FULL JOIN (SELECT * FROM "LedgerLine" WHERE "entryId" = taken) b ON a."account" = b."account"
      WHERE a."minor" IS DISTINCT FROM -b."minor") THEN
    RAISE EXCEPTION 'ledger entry % does not take back % as it stands', entry, taken USING ERRCODE = 'check_violation', CONSTRAINT = 'ledger_reversal';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER ledger_entry_balances AFTER INSERT ON "LedgerEntry" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION ledger_balances();
CREATE CONSTRAINT TRIGGER ledger_line_balances AFTER INSERT ON "LedgerLine" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION ledger_balances();
