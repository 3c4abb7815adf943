-- CreateTable
CREATE TABLE "Trouble" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "holdingId" UUID,
    "troubleKey" TEXT NOT NULL,
    "certainty" TEXT NOT NULL,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "widthCm" INTEGER NOT NULL,
    "lengthCm" INTEGER NOT NULL,
    "foundOn" DATE NOT NULL,
    "notes" TEXT,
    "notedByMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retiredAt" TIMESTAMPTZ(3),

    CONSTRAINT "Trouble_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Course" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "askedByMemberId" UUID NOT NULL,
    "firstSeason" INTEGER NOT NULL,
    "years" INTEGER NOT NULL,
    "wishes" JSONB NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "progress" JSONB,
    "found" JSONB,
    "board" JSONB,
    "askedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "beatAt" TIMESTAMPTZ(3),
    "endedAt" TIMESTAMPTZ(3),
    "takenOnAt" TIMESTAMPTZ(3),

    CONSTRAINT "Course_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Trouble_societyId_frameId_idx" ON "Trouble"("societyId", "frameId");

-- CreateIndex
CREATE UNIQUE INDEX "Trouble_id_societyId_key" ON "Trouble"("id", "societyId");

-- CreateIndex
CREATE INDEX "Course_societyId_holdingId_askedAt_idx" ON "Course"("societyId", "holdingId", "askedAt");

-- CreateIndex
CREATE UNIQUE INDEX "Course_id_societyId_key" ON "Course"("id", "societyId");

-- AddForeignKey
ALTER TABLE "Trouble" ADD CONSTRAINT "Trouble_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Trouble" ADD CONSTRAINT "Trouble_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Course" ADD CONSTRAINT "Course_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;



ALTER TABLE "Trouble" ADD CONSTRAINT trouble_size CHECK ("widthCm" > 0 AND "lengthCm" > 0);
ALTER TABLE "Trouble" ADD CONSTRAINT trouble_certainty CHECK ("certainty" IN ('suspected', 'likely', 'sure'));
ALTER TABLE "Course" ADD CONSTRAINT course_state CHECK ("state" IN ('waiting', 'solving', 'solved', 'cancelled', 'failed'));
ALTER TABLE "Course" ADD CONSTRAINT course_years CHECK ("years" BETWEEN 1 AND 6 AND "firstSeason" BETWEEN 1900 AND 2200);
