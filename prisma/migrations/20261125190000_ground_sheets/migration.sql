-- AlterTable
ALTER TABLE "Delivery" ADD COLUMN     "heldAt" TIMESTAMPTZ(3),
ADD COLUMN     "heldReason" TEXT;

-- AlterTable
ALTER TABLE "GroundWork" ADD COLUMN     "ageMonths" INTEGER,
ADD COLUMN     "depthCm" INTEGER,
ADD COLUMN     "incorporated" BOOLEAN NOT NULL DEFAULT true,
ADD COLUMN     "massG" INTEGER,
ADD COLUMN     "method" TEXT,
ADD COLUMN     "sheetId" UUID;

-- CreateTable
CREATE TABLE "GroundSheet" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "bedId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "holdingId" UUID,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "widthCm" INTEGER NOT NULL,
    "lengthCm" INTEGER NOT NULL,
    "season" INTEGER NOT NULL,
    "cropGroup" TEXT NOT NULL,
    "order" JSONB NOT NULL,
    "madeByMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "GroundSheet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TrenchTick" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "sheetId" UUID NOT NULL,
    "trench" INTEGER NOT NULL,
    "doneOn" DATE NOT NULL,
    "byMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "undoneAt" TIMESTAMPTZ(3),

    CONSTRAINT "TrenchTick_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ResidueTest" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "deliveryId" UUID,
    "name" TEXT NOT NULL,
    "record" JSONB NOT NULL,
    "madeByMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "changedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "endedAt" TIMESTAMPTZ(3),
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "ResidueTest_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "GroundSheet_societyId_bedId_idx" ON "GroundSheet"("societyId", "bedId");

-- CreateIndex
CREATE INDEX "GroundSheet_frameId_societyId_idx" ON "GroundSheet"("frameId", "societyId");

-- CreateIndex
CREATE INDEX "GroundSheet_holdingId_societyId_idx" ON "GroundSheet"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "GroundSheet_id_societyId_key" ON "GroundSheet"("id", "societyId");

-- CreateIndex
CREATE INDEX "TrenchTick_sheetId_societyId_idx" ON "TrenchTick"("sheetId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "TrenchTick_id_societyId_key" ON "TrenchTick"("id", "societyId");

-- CreateIndex
CREATE INDEX "ResidueTest_societyId_deliveryId_idx" ON "ResidueTest"("societyId", "deliveryId");

-- CreateIndex
CREATE INDEX "ResidueTest_societyId_madeByMemberId_idx" ON "ResidueTest"("societyId", "madeByMemberId");

-- CreateIndex
CREATE UNIQUE INDEX "ResidueTest_id_societyId_key" ON "ResidueTest"("id", "societyId");

-- CreateIndex
CREATE INDEX "GroundWork_sheetId_societyId_idx" ON "GroundWork"("sheetId", "societyId");

-- AddForeignKey
ALTER TABLE "GroundWork" ADD CONSTRAINT "GroundWork_sheetId_societyId_fkey" FOREIGN KEY ("sheetId", "societyId") REFERENCES "GroundSheet"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GroundSheet" ADD CONSTRAINT "GroundSheet_bedId_societyId_fkey" FOREIGN KEY ("bedId", "societyId") REFERENCES "Bed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GroundSheet" ADD CONSTRAINT "GroundSheet_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GroundSheet" ADD CONSTRAINT "GroundSheet_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrenchTick" ADD CONSTRAINT "TrenchTick_sheetId_societyId_fkey" FOREIGN KEY ("sheetId", "societyId") REFERENCES "GroundSheet"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ResidueTest" ADD CONSTRAINT "ResidueTest_deliveryId_societyId_fkey" FOREIGN KEY ("deliveryId", "societyId") REFERENCES "Delivery"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema language cannot say.
ALTER TABLE "GroundWork" ADD CONSTRAINT work_kind CHECK ("kind" IN ('dug', 'manured', 'fed', 'limed', 'strawed'));
ALTER TABLE "GroundWork" ADD CONSTRAINT work_amounts CHECK (coalesce("massG", 0) >= 0 AND coalesce("ageMonths", 0) >= 0 AND coalesce("depthCm", 1) > 0);
ALTER TABLE "GroundSheet" ADD CONSTRAINT sheet_size CHECK ("widthCm" > 0 AND "lengthCm" > 0);
ALTER TABLE "GroundSheet" ADD CONSTRAINT sheet_season CHECK ("season" BETWEEN 1900 AND 2200);
ALTER TABLE "TrenchTick" ADD CONSTRAINT tick_trench CHECK ("trench" >= 1);
-- A trench is dug once, however many holders tick it at the same time.
CREATE UNIQUE INDEX trench_ticked_once ON "TrenchTick" ("sheetId", "trench") WHERE "undoneAt" IS NULL;
-- A heap that is held is not shared out.
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_held CHECK ("heldAt" IS NULL OR "state" NOT IN ('shared', 'collecting', 'settled'));
