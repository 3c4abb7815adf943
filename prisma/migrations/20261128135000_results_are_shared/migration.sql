-- CreateTable
CREATE TABLE "ResultSharing" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "byMemberId" UUID NOT NULL,
    "shares" BOOLEAN NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "ResultSharing_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "ResultSharing_societyId_holdingId_byMemberId_at_idx" ON "ResultSharing"("societyId", "holdingId", "byMemberId", "at");

-- CreateIndex
CREATE INDEX "ResultSharing_byMemberId_societyId_idx" ON "ResultSharing"("byMemberId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "ResultSharing_id_societyId_key" ON "ResultSharing"("id", "societyId");

-- AddForeignKey
ALTER TABLE "ResultSharing" ADD CONSTRAINT "ResultSharing_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ResultSharing" ADD CONSTRAINT "ResultSharing_byMemberId_societyId_fkey" FOREIGN KEY ("byMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;
