-- CreateTable
CREATE TABLE "Harvest" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "plantingId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "onDay" DATE NOT NULL,
    "measure" TEXT NOT NULL,
    "amount" INTEGER NOT NULL,
    "quality" TEXT NOT NULL,
    "notes" TEXT,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "Harvest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "StorePlace" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "tenthC" INTEGER,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "StorePlace_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "StoreLot" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "placeId" UUID NOT NULL,
    "harvestId" UUID,
    "keepingKey" TEXT NOT NULL,
    "variety" TEXT,
    "source" TEXT,
    "measure" TEXT NOT NULL,
    "putIn" INTEGER NOT NULL,
    "pieceG" INTEGER,
    "putInOn" DATE NOT NULL,
    "condition" TEXT NOT NULL,
    "goingOverDays" INTEGER,
    "curingFrom" DATE,
    "curedOn" DATE,
    "notes" TEXT,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "StoreLot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "GoingOver" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "lotId" UUID NOT NULL,
    "onDay" DATE NOT NULL,
    "used" INTEGER NOT NULL,
    "bad" INTEGER NOT NULL,
    "badWhy" TEXT,
    "sound" INTEGER NOT NULL,
    "byMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "undoneAt" TIMESTAMPTZ(3),

    CONSTRAINT "GoingOver_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HouseholdUse" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "keepingKey" TEXT NOT NULL,
    "tenthsPerWeek" INTEGER,
    "newCropFrom" TEXT,
    "byMemberId" UUID NOT NULL,
    "setAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "HouseholdUse_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SeedPacket" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "cropKey" TEXT NOT NULL,
    "variety" TEXT,
    "seeds" INTEGER NOT NULL,
    "packedYear" INTEGER,
    "germinationPercent" INTEGER,
    "wantId" UUID,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "usedUpAt" TIMESTAMPTZ(3),
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "SeedPacket_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SeedOrder" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "closesAt" TIMESTAMPTZ(3) NOT NULL,
    "notes" TEXT,
    "extraMinor" INTEGER NOT NULL DEFAULT 0,
    "seller" TEXT,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "orderedAt" TIMESTAMPTZ(3),
    "arrivedAt" TIMESTAMPTZ(3),
    "settledAt" TIMESTAMPTZ(3),
    "calledOffAt" TIMESTAMPTZ(3),

    CONSTRAINT "SeedOrder_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SeedItem" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "orderId" UUID NOT NULL,
    "cropKey" TEXT NOT NULL,
    "variety" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "SeedItem_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SeedPack" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "itemId" UUID NOT NULL,
    "amount" INTEGER NOT NULL,
    "priceMinor" INTEGER NOT NULL,
    "ordered" INTEGER,
    "arrived" INTEGER,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "SeedPack_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SeedWant" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "itemId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "amount" INTEGER NOT NULL,
    "byMemberId" UUID NOT NULL,
    "changedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawnAt" TIMESTAMPTZ(3),
    "given" INTEGER,
    "owesMinor" INTEGER,
    "handedOutAt" TIMESTAMPTZ(3),

    CONSTRAINT "SeedWant_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CalendarFeed" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "revokedAt" TIMESTAMPTZ(3),

    CONSTRAINT "CalendarFeed_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "FeedEvent" (
    "societyId" UUID NOT NULL,
    "feedId" UUID NOT NULL,
    "uid" TEXT NOT NULL,
    "onDay" DATE NOT NULL,
    "told" JSONB NOT NULL,
    "sequence" INTEGER NOT NULL DEFAULT 0,
    "changedAt" TIMESTAMPTZ(3) NOT NULL,
    "cancelled" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "FeedEvent_pkey" PRIMARY KEY ("feedId","uid")
);

-- CreateTable
CREATE TABLE "DigestWish" (
    "societyId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "wanted" BOOLEAN NOT NULL DEFAULT true,
    "tokenHash" TEXT NOT NULL,
    "changedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "DigestWish_pkey" PRIMARY KEY ("memberId")
);

-- CreateTable
CREATE TABLE "DigestSent" (
    "societyId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "monday" DATE NOT NULL,
    "mailId" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "DigestSent_pkey" PRIMARY KEY ("memberId","monday")
);

-- CreateIndex
CREATE INDEX "Harvest_plantingId_societyId_idx" ON "Harvest"("plantingId", "societyId");

-- CreateIndex
CREATE INDEX "Harvest_holdingId_societyId_onDay_idx" ON "Harvest"("holdingId", "societyId", "onDay");

-- CreateIndex
CREATE UNIQUE INDEX "Harvest_id_societyId_key" ON "Harvest"("id", "societyId");

-- CreateIndex
CREATE INDEX "StorePlace_holdingId_societyId_idx" ON "StorePlace"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "StorePlace_id_societyId_key" ON "StorePlace"("id", "societyId");

-- CreateIndex
CREATE INDEX "StoreLot_holdingId_societyId_idx" ON "StoreLot"("holdingId", "societyId");

-- CreateIndex
CREATE INDEX "StoreLot_placeId_societyId_idx" ON "StoreLot"("placeId", "societyId");

-- CreateIndex
CREATE INDEX "StoreLot_harvestId_societyId_idx" ON "StoreLot"("harvestId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "StoreLot_id_societyId_key" ON "StoreLot"("id", "societyId");

-- CreateIndex
CREATE INDEX "GoingOver_lotId_societyId_onDay_idx" ON "GoingOver"("lotId", "societyId", "onDay");

-- CreateIndex
CREATE UNIQUE INDEX "GoingOver_id_societyId_key" ON "GoingOver"("id", "societyId");

-- CreateIndex
CREATE INDEX "HouseholdUse_holdingId_societyId_keepingKey_setAt_idx" ON "HouseholdUse"("holdingId", "societyId", "keepingKey", "setAt");

-- CreateIndex
CREATE UNIQUE INDEX "HouseholdUse_id_societyId_key" ON "HouseholdUse"("id", "societyId");

-- CreateIndex
CREATE INDEX "SeedPacket_holdingId_societyId_cropKey_idx" ON "SeedPacket"("holdingId", "societyId", "cropKey");

-- CreateIndex
CREATE INDEX "SeedPacket_wantId_societyId_idx" ON "SeedPacket"("wantId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SeedPacket_id_societyId_key" ON "SeedPacket"("id", "societyId");

-- CreateIndex
CREATE INDEX "SeedOrder_societyId_closesAt_idx" ON "SeedOrder"("societyId", "closesAt");

-- CreateIndex
CREATE UNIQUE INDEX "SeedOrder_id_societyId_key" ON "SeedOrder"("id", "societyId");

-- CreateIndex
CREATE INDEX "SeedItem_orderId_societyId_idx" ON "SeedItem"("orderId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SeedItem_id_societyId_key" ON "SeedItem"("id", "societyId");

-- CreateIndex
CREATE INDEX "SeedPack_itemId_societyId_idx" ON "SeedPack"("itemId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SeedPack_id_societyId_key" ON "SeedPack"("id", "societyId");

-- CreateIndex
CREATE INDEX "SeedWant_holdingId_societyId_idx" ON "SeedWant"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SeedWant_id_societyId_key" ON "SeedWant"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SeedWant_itemId_holdingId_key" ON "SeedWant"("itemId", "holdingId");

-- CreateIndex
CREATE UNIQUE INDEX "CalendarFeed_tokenHash_key" ON "CalendarFeed"("tokenHash");

-- CreateIndex
CREATE INDEX "CalendarFeed_societyId_memberId_idx" ON "CalendarFeed"("societyId", "memberId");

-- CreateIndex
CREATE UNIQUE INDEX "CalendarFeed_id_societyId_key" ON "CalendarFeed"("id", "societyId");

-- CreateIndex
CREATE INDEX "FeedEvent_feedId_societyId_idx" ON "FeedEvent"("feedId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "DigestWish_tokenHash_key" ON "DigestWish"("tokenHash");

-- CreateIndex
CREATE INDEX "DigestWish_societyId_memberId_idx" ON "DigestWish"("societyId", "memberId");

-- CreateIndex
CREATE INDEX "DigestSent_societyId_monday_idx" ON "DigestSent"("societyId", "monday");

-- AddForeignKey
ALTER TABLE "Harvest" ADD CONSTRAINT "Harvest_plantingId_societyId_fkey" FOREIGN KEY ("plantingId", "societyId") REFERENCES "Planting"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Harvest" ADD CONSTRAINT "Harvest_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StorePlace" ADD CONSTRAINT "StorePlace_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StoreLot" ADD CONSTRAINT "StoreLot_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StoreLot" ADD CONSTRAINT "StoreLot_placeId_societyId_fkey" FOREIGN KEY ("placeId", "societyId") REFERENCES "StorePlace"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StoreLot" ADD CONSTRAINT "StoreLot_harvestId_societyId_fkey" FOREIGN KEY ("harvestId", "societyId") REFERENCES "Harvest"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GoingOver" ADD CONSTRAINT "GoingOver_lotId_societyId_fkey" FOREIGN KEY ("lotId", "societyId") REFERENCES "StoreLot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HouseholdUse" ADD CONSTRAINT "HouseholdUse_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedPacket" ADD CONSTRAINT "SeedPacket_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedPacket" ADD CONSTRAINT "SeedPacket_wantId_societyId_fkey" FOREIGN KEY ("wantId", "societyId") REFERENCES "SeedWant"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedOrder" ADD CONSTRAINT "SeedOrder_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedItem" ADD CONSTRAINT "SeedItem_orderId_societyId_fkey" FOREIGN KEY ("orderId", "societyId") REFERENCES "SeedOrder"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedPack" ADD CONSTRAINT "SeedPack_itemId_societyId_fkey" FOREIGN KEY ("itemId", "societyId") REFERENCES "SeedItem"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedWant" ADD CONSTRAINT "SeedWant_itemId_societyId_fkey" FOREIGN KEY ("itemId", "societyId") REFERENCES "SeedItem"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedWant" ADD CONSTRAINT "SeedWant_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CalendarFeed" ADD CONSTRAINT "CalendarFeed_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FeedEvent" ADD CONSTRAINT "FeedEvent_feedId_societyId_fkey" FOREIGN KEY ("feedId", "societyId") REFERENCES "CalendarFeed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "DigestWish" ADD CONSTRAINT "DigestWish_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "DigestSent" ADD CONSTRAINT "DigestSent_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;



-- What the schema language cannot say.
ALTER TABLE "Harvest" ADD CONSTRAINT harvest_amount CHECK ("measure" IN ('grams', 'pieces') AND "amount" >= 0);
ALTER TABLE "StorePlace" ADD CONSTRAINT place_kind CHECK ("kind" IN ('shed', 'clamp', 'string', 'frame', 'room', 'cellar', 'other') AND "tenthC" BETWEEN -500 AND 500);
ALTER TABLE "StoreLot" ADD CONSTRAINT lot_amount CHECK ("measure" IN ('grams', 'pieces') AND "putIn" > 0 AND "pieceG" > 0 AND "goingOverDays" > 0);
ALTER TABLE "StoreLot" ADD CONSTRAINT lot_condition CHECK ("condition" IN ('sound', 'damaged', 'uncured', 'unripe') AND ("curedOn" IS NULL OR "curedOn" >= "curingFrom"));
ALTER TABLE "GoingOver" ADD CONSTRAINT going_amounts CHECK ("used" >= 0 AND "bad" >= 0 AND "sound" >= 0);
ALTER TABLE "GoingOver" ADD CONSTRAINT going_why CHECK ("badWhy" IN ('mould', 'rot', 'sprouted', 'shrivelled', 'frosted', 'gnawed', 'other'));
ALTER TABLE "HouseholdUse" ADD CONSTRAINT use_amount CHECK ("tenthsPerWeek" > 0);
ALTER TABLE "SeedPacket" ADD CONSTRAINT packet_amount CHECK ("seeds" >= 0 AND "packedYear" BETWEEN 1900 AND 2200 AND "germinationPercent" BETWEEN 0 AND 100);
ALTER TABLE "SeedOrder" ADD CONSTRAINT seed_order_state CHECK ("state" IN ('open', 'closed', 'ordered', 'arrived', 'settled', 'called-off') AND "extraMinor" >= 0);
ALTER TABLE "SeedItem" ADD CONSTRAINT seed_item_unit CHECK ("unit" IN ('seeds', 'milligrams', 'sets'));
ALTER TABLE "SeedPack" ADD CONSTRAINT seed_pack_amounts CHECK ("amount" > 0 AND "priceMinor" >= 0 AND coalesce("ordered", 0) >= 0 AND coalesce("arrived", 0) >= 0);
ALTER TABLE "SeedWant" ADD CONSTRAINT seed_want_amounts CHECK ("amount" > 0 AND coalesce("given", 0) >= 0 AND coalesce("owesMinor", 0) >= 0);
ALTER TABLE "FeedEvent" ADD CONSTRAINT feed_sequence CHECK ("sequence" >= 0);
ALTER TABLE "DigestSent" ADD CONSTRAINT digest_monday CHECK (extract(isodow FROM "monday") = 1);
-- A member has one feed at a time.
CREATE UNIQUE INDEX one_feed_at_a_time ON "CalendarFeed" ("memberId") WHERE "revokedAt" IS NULL;
