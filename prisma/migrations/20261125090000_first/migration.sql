-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateEnum
CREATE TYPE "Role" AS ENUM ('secretary', 'treasurer', 'chair', 'gate_helper');

-- CreateEnum
CREATE TYPE "DeliveryState" AS ENUM ('planned', 'open', 'closed', 'tipped', 'shared', 'collecting', 'settled', 'called_off');

-- CreateTable
CREATE TABLE "Account" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "passwordHash" TEXT NOT NULL,
    "sessionVersion" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PasswordReset" (
    "id" UUID NOT NULL,
    "accountId" UUID NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "usedAt" TIMESTAMPTZ(3),
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "PasswordReset_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SignInAttempt" (
    "id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "succeeded" BOOLEAN NOT NULL,

    CONSTRAINT "SignInAttempt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Society" (
    "id" UUID NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL DEFAULT 'Europe/London',
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Society_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SocietySetting" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "effectiveFrom" DATE NOT NULL,
    "setByMemberId" UUID,
    "setAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "SocietySetting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Member" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "accountId" UUID,
    "name" TEXT NOT NULL,
    "email" TEXT,
    "phone" TEXT,
    "postal" TEXT,
    "units" TEXT NOT NULL DEFAULT 'metric',
    "joinedOn" DATE NOT NULL,
    "leftOn" DATE,
    "erasedAt" TIMESTAMPTZ(3),
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Member_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "MemberRole" (
    "societyId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "role" "Role" NOT NULL,
    "grantedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "MemberRole_pkey" PRIMARY KEY ("memberId","role")
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "usedAt" TIMESTAMPTZ(3),
    "withdrawnAt" TIMESTAMPTZ(3),
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Site" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "outline" JSONB,
    "paths" JSONB,
    "northCentideg" INTEGER NOT NULL DEFAULT 0,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Site_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Frame" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "originXCm" INTEGER,
    "originYCm" INTEGER,
    "bearingCentideg" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Frame_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Plot" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "polygon" JSONB,
    "quarterRods" INTEGER,
    "areaCm2" BIGINT NOT NULL,
    "fromOn" DATE NOT NULL,
    "retiredOn" DATE,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Plot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PlotLineage" (
    "societyId" UUID NOT NULL,
    "parentId" UUID NOT NULL,
    "childId" UUID NOT NULL,
    "on" DATE NOT NULL,

    CONSTRAINT "PlotLineage_pkey" PRIMARY KEY ("parentId","childId")
);

-- CreateTable
CREATE TABLE "Holding" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "bookerMemberId" UUID,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "endedOn" DATE,

    CONSTRAINT "Holding_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HoldingMember" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "fromOn" DATE NOT NULL,
    "untilOn" DATE,

    CONSTRAINT "HoldingMember_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Tenancy" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "plotId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "fromOn" DATE NOT NULL,
    "untilOn" DATE,

    CONSTRAINT "Tenancy_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Bed" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "plotId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "widthCm" INTEGER NOT NULL,
    "lengthCm" INTEGER NOT NULL,
    "typed" JSONB,
    "fromOn" DATE NOT NULL,
    "retiredOn" DATE,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Bed_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BedLineage" (
    "societyId" UUID NOT NULL,
    "parentId" UUID NOT NULL,
    "childId" UUID NOT NULL,
    "on" DATE NOT NULL,

    CONSTRAINT "BedLineage_pkey" PRIMARY KEY ("parentId","childId")
);

-- CreateTable
CREATE TABLE "SocietyCrop" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "binomial" TEXT,
    "family" TEXT NOT NULL,
    "cropGroup" TEXT NOT NULL,
    "hostGroups" TEXT[],
    "life" TEXT NOT NULL,
    "takesManure" BOOLEAN NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "SocietyCrop_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Planting" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "bedId" UUID NOT NULL,
    "holdingId" UUID,
    "cropKey" TEXT NOT NULL,
    "variety" TEXT,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "widthCm" INTEGER NOT NULL,
    "lengthCm" INTEGER NOT NULL,
    "sownOn" DATE,
    "plantedOn" DATE,
    "clearedOn" DATE,
    "firstSeason" INTEGER NOT NULL,
    "lastSeason" INTEGER NOT NULL,
    "planned" BOOLEAN NOT NULL DEFAULT false,
    "notes" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "Planting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "GroundWork" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "holdingId" UUID,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "widthCm" INTEGER NOT NULL,
    "lengthCm" INTEGER NOT NULL,
    "kind" TEXT NOT NULL DEFAULT 'manured',
    "materialKey" TEXT,
    "loads" INTEGER,
    "doneOn" DATE,
    "season" INTEGER NOT NULL,
    "deliveryId" UUID,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "GroundWork_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Delivery" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "siteId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "state" "DeliveryState" NOT NULL DEFAULT 'planned',
    "materialKey" TEXT NOT NULL,
    "ageMonths" INTEGER,
    "supplier" TEXT,
    "amountThousandths" BIGINT NOT NULL,
    "amountUnit" TEXT NOT NULL,
    "densityGPerL" INTEGER NOT NULL,
    "barrowLitres" INTEGER NOT NULL,
    "rateGPerM2" INTEGER NOT NULL,
    "expectedLoads" INTEGER NOT NULL,
    "capLoads" INTEGER,
    "dropPoint" TEXT,
    "arrivesOn" DATE NOT NULL,
    "collectByOn" DATE NOT NULL,
    "closesAt" TIMESTAMPTZ(3) NOT NULL,
    "keyHolderId" UUID,
    "gateNote" TEXT,
    "unloadersWanted" INTEGER NOT NULL DEFAULT 0,
    "priceMinor" INTEGER NOT NULL DEFAULT 0,
    "lotBytesHex" TEXT,
    "lotCommitment" TEXT,
    "lotRevealedAt" TIMESTAMPTZ(3),
    "closedAt" TIMESTAMPTZ(3),
    "heapLoads" INTEGER,
    "sharedLoads" INTEGER NOT NULL DEFAULT 0,
    "collectedLoads" INTEGER NOT NULL DEFAULT 0,
    "confirmedAt" TIMESTAMPTZ(3),
    "settledAt" TIMESTAMPTZ(3),
    "shareOutRecord" JSONB,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Delivery_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "UnloadOffer" (
    "societyId" UUID NOT NULL,
    "deliveryId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "UnloadOffer_pkey" PRIMARY KEY ("deliveryId","memberId")
);

-- CreateTable
CREATE TABLE "Booking" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "deliveryId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "asked" INTEGER NOT NULL,
    "needLoads" INTEGER NOT NULL,
    "needReason" JSONB NOT NULL,
    "bookedByMemberId" UUID NOT NULL,
    "onPaper" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "changedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawnAt" TIMESTAMPTZ(3),
    "creditBeforeMillionths" BIGINT,
    "share" INTEGER,
    "dueMillionths" BIGINT,
    "reason" JSONB,
    "collectedLoads" INTEGER NOT NULL DEFAULT 0,
    "beyondLoads" INTEGER NOT NULL DEFAULT 0,
    "gaveUpAt" TIMESTAMPTZ(3),

    CONSTRAINT "Booking_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BookingBed" (
    "societyId" UUID NOT NULL,
    "bookingId" UUID NOT NULL,
    "bedId" UUID NOT NULL,
    "order" INTEGER NOT NULL,
    "dueCm2" BIGINT NOT NULL,

    CONSTRAINT "BookingBed_pkey" PRIMARY KEY ("bookingId","bedId")
);

-- CreateTable
CREATE TABLE "Collection" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "deliveryId" UUID NOT NULL,
    "bookingId" UUID NOT NULL,
    "loads" INTEGER NOT NULL,
    "beyond" BOOLEAN NOT NULL DEFAULT false,
    "reason" TEXT,
    "reversesId" UUID,
    "byMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Collection_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CreditEntry" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "materialKey" TEXT NOT NULL,
    "holdingId" UUID,
    "deliveryId" UUID,
    "changeMillionths" BIGINT NOT NULL,
    "code" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "CreditEntry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "AuditRow" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "actorMemberId" UUID,
    "forMemberId" UUID,
    "forHoldingId" UUID,
    "verb" TEXT NOT NULL,
    "thing" TEXT NOT NULL,
    "thingId" UUID,
    "before" JSONB,
    "after" JSONB,
    "writeId" UUID,

    CONSTRAINT "AuditRow_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "WriteOnce" (
    "societyId" UUID NOT NULL,
    "writeId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "useCase" TEXT NOT NULL,
    "reply" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "WriteOnce_pkey" PRIMARY KEY ("societyId","writeId")
);

-- CreateTable
CREATE TABLE "MailMessage" (
    "id" UUID NOT NULL,
    "societyId" UUID,
    "toAddress" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "body" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "sentAt" TIMESTAMPTZ(3),

    CONSTRAINT "MailMessage_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Account_email_key" ON "Account"("email");

-- CreateIndex
CREATE UNIQUE INDEX "PasswordReset_tokenHash_key" ON "PasswordReset"("tokenHash");

-- CreateIndex
CREATE INDEX "PasswordReset_accountId_idx" ON "PasswordReset"("accountId");

-- CreateIndex
CREATE INDEX "SignInAttempt_key_at_idx" ON "SignInAttempt"("key", "at");

-- CreateIndex
CREATE UNIQUE INDEX "Society_slug_key" ON "Society"("slug");

-- CreateIndex
CREATE INDEX "SocietySetting_societyId_key_effectiveFrom_idx" ON "SocietySetting"("societyId", "key", "effectiveFrom");

-- CreateIndex
CREATE INDEX "Member_societyId_name_idx" ON "Member"("societyId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Member_id_societyId_key" ON "Member"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Member_societyId_accountId_key" ON "Member"("societyId", "accountId");

-- CreateIndex
CREATE INDEX "MemberRole_societyId_role_idx" ON "MemberRole"("societyId", "role");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_tokenHash_key" ON "Invitation"("tokenHash");

-- CreateIndex
CREATE INDEX "Invitation_societyId_memberId_idx" ON "Invitation"("societyId", "memberId");

-- CreateIndex
CREATE UNIQUE INDEX "Site_id_societyId_key" ON "Site"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Site_societyId_name_key" ON "Site"("societyId", "name");

-- CreateIndex
CREATE INDEX "Frame_societyId_siteId_idx" ON "Frame"("societyId", "siteId");

-- CreateIndex
CREATE UNIQUE INDEX "Frame_id_societyId_key" ON "Frame"("id", "societyId");

-- CreateIndex
CREATE INDEX "Plot_societyId_siteId_number_idx" ON "Plot"("societyId", "siteId", "number");

-- CreateIndex
CREATE INDEX "Plot_frameId_societyId_idx" ON "Plot"("frameId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Plot_id_societyId_key" ON "Plot"("id", "societyId");

-- CreateIndex
CREATE INDEX "Holding_societyId_idx" ON "Holding"("societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Holding_id_societyId_key" ON "Holding"("id", "societyId");

-- CreateIndex
CREATE INDEX "HoldingMember_societyId_memberId_idx" ON "HoldingMember"("societyId", "memberId");

-- CreateIndex
CREATE INDEX "HoldingMember_holdingId_societyId_idx" ON "HoldingMember"("holdingId", "societyId");

-- CreateIndex
CREATE INDEX "Tenancy_societyId_plotId_idx" ON "Tenancy"("societyId", "plotId");

-- CreateIndex
CREATE INDEX "Tenancy_holdingId_societyId_idx" ON "Tenancy"("holdingId", "societyId");

-- CreateIndex
CREATE INDEX "Bed_societyId_plotId_idx" ON "Bed"("societyId", "plotId");

-- CreateIndex
CREATE INDEX "Bed_frameId_societyId_idx" ON "Bed"("frameId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Bed_id_societyId_key" ON "Bed"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "SocietyCrop_societyId_key_key" ON "SocietyCrop"("societyId", "key");

-- CreateIndex
CREATE INDEX "Planting_societyId_frameId_firstSeason_idx" ON "Planting"("societyId", "frameId", "firstSeason");

-- CreateIndex
CREATE INDEX "Planting_societyId_firstSeason_lastSeason_idx" ON "Planting"("societyId", "firstSeason", "lastSeason");

-- CreateIndex
CREATE INDEX "Planting_bedId_societyId_idx" ON "Planting"("bedId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Planting_id_societyId_key" ON "Planting"("id", "societyId");

-- CreateIndex
CREATE INDEX "GroundWork_societyId_frameId_season_idx" ON "GroundWork"("societyId", "frameId", "season");

-- CreateIndex
CREATE UNIQUE INDEX "GroundWork_id_societyId_key" ON "GroundWork"("id", "societyId");

-- CreateIndex
CREATE INDEX "Delivery_societyId_state_idx" ON "Delivery"("societyId", "state");

-- CreateIndex
CREATE UNIQUE INDEX "Delivery_id_societyId_key" ON "Delivery"("id", "societyId");

-- CreateIndex
CREATE INDEX "Booking_holdingId_societyId_idx" ON "Booking"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Booking_id_societyId_key" ON "Booking"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Booking_deliveryId_holdingId_key" ON "Booking"("deliveryId", "holdingId");

-- CreateIndex
CREATE UNIQUE INDEX "Collection_reversesId_key" ON "Collection"("reversesId");

-- CreateIndex
CREATE INDEX "Collection_deliveryId_societyId_idx" ON "Collection"("deliveryId", "societyId");

-- CreateIndex
CREATE INDEX "Collection_bookingId_societyId_idx" ON "Collection"("bookingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Collection_id_societyId_key" ON "Collection"("id", "societyId");

-- CreateIndex
CREATE INDEX "CreditEntry_societyId_materialKey_holdingId_idx" ON "CreditEntry"("societyId", "materialKey", "holdingId");

-- CreateIndex
CREATE INDEX "CreditEntry_deliveryId_societyId_idx" ON "CreditEntry"("deliveryId", "societyId");

-- CreateIndex
CREATE INDEX "AuditRow_societyId_at_idx" ON "AuditRow"("societyId", "at");

-- CreateIndex
CREATE INDEX "AuditRow_societyId_thing_thingId_idx" ON "AuditRow"("societyId", "thing", "thingId");

-- CreateIndex
CREATE INDEX "AuditRow_societyId_actorMemberId_at_idx" ON "AuditRow"("societyId", "actorMemberId", "at");

-- CreateIndex
CREATE INDEX "MailMessage_createdAt_idx" ON "MailMessage"("createdAt");

-- AddForeignKey
ALTER TABLE "PasswordReset" ADD CONSTRAINT "PasswordReset_accountId_fkey" FOREIGN KEY ("accountId") REFERENCES "Account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SocietySetting" ADD CONSTRAINT "SocietySetting_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SocietySetting" ADD CONSTRAINT "SocietySetting_setByMemberId_societyId_fkey" FOREIGN KEY ("setByMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Member" ADD CONSTRAINT "Member_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Member" ADD CONSTRAINT "Member_accountId_fkey" FOREIGN KEY ("accountId") REFERENCES "Account"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MemberRole" ADD CONSTRAINT "MemberRole_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Invitation" ADD CONSTRAINT "Invitation_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Invitation" ADD CONSTRAINT "Invitation_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Site" ADD CONSTRAINT "Site_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Frame" ADD CONSTRAINT "Frame_siteId_societyId_fkey" FOREIGN KEY ("siteId", "societyId") REFERENCES "Site"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Plot" ADD CONSTRAINT "Plot_siteId_societyId_fkey" FOREIGN KEY ("siteId", "societyId") REFERENCES "Site"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Plot" ADD CONSTRAINT "Plot_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PlotLineage" ADD CONSTRAINT "PlotLineage_parentId_societyId_fkey" FOREIGN KEY ("parentId", "societyId") REFERENCES "Plot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PlotLineage" ADD CONSTRAINT "PlotLineage_childId_societyId_fkey" FOREIGN KEY ("childId", "societyId") REFERENCES "Plot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Holding" ADD CONSTRAINT "Holding_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Holding" ADD CONSTRAINT "Holding_bookerMemberId_societyId_fkey" FOREIGN KEY ("bookerMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldingMember" ADD CONSTRAINT "HoldingMember_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HoldingMember" ADD CONSTRAINT "HoldingMember_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Tenancy" ADD CONSTRAINT "Tenancy_plotId_societyId_fkey" FOREIGN KEY ("plotId", "societyId") REFERENCES "Plot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Tenancy" ADD CONSTRAINT "Tenancy_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Bed" ADD CONSTRAINT "Bed_plotId_societyId_fkey" FOREIGN KEY ("plotId", "societyId") REFERENCES "Plot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Bed" ADD CONSTRAINT "Bed_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BedLineage" ADD CONSTRAINT "BedLineage_parentId_societyId_fkey" FOREIGN KEY ("parentId", "societyId") REFERENCES "Bed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BedLineage" ADD CONSTRAINT "BedLineage_childId_societyId_fkey" FOREIGN KEY ("childId", "societyId") REFERENCES "Bed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SocietyCrop" ADD CONSTRAINT "SocietyCrop_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Planting" ADD CONSTRAINT "Planting_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Planting" ADD CONSTRAINT "Planting_bedId_societyId_fkey" FOREIGN KEY ("bedId", "societyId") REFERENCES "Bed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Planting" ADD CONSTRAINT "Planting_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GroundWork" ADD CONSTRAINT "GroundWork_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GroundWork" ADD CONSTRAINT "GroundWork_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GroundWork" ADD CONSTRAINT "GroundWork_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Delivery" ADD CONSTRAINT "Delivery_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Delivery" ADD CONSTRAINT "Delivery_siteId_societyId_fkey" FOREIGN KEY ("siteId", "societyId") REFERENCES "Site"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "UnloadOffer" ADD CONSTRAINT "UnloadOffer_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Booking" ADD CONSTRAINT "Booking_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Booking" ADD CONSTRAINT "Booking_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BookingBed" ADD CONSTRAINT "BookingBed_bookingId_societyId_fkey" FOREIGN KEY ("bookingId", "societyId") REFERENCES "Booking"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BookingBed" ADD CONSTRAINT "BookingBed_bedId_societyId_fkey" FOREIGN KEY ("bedId", "societyId") REFERENCES "Bed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Collection" ADD CONSTRAINT "Collection_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Collection" ADD CONSTRAINT "Collection_bookingId_societyId_fkey" FOREIGN KEY ("bookingId", "societyId") REFERENCES "Booking"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CreditEntry" ADD CONSTRAINT "CreditEntry_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CreditEntry" ADD CONSTRAINT "CreditEntry_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "AuditRow" ADD CONSTRAINT "AuditRow_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "WriteOnce" ADD CONSTRAINT "WriteOnce_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MailMessage" ADD CONSTRAINT "MailMessage_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE SET NULL ON UPDATE CASCADE;

