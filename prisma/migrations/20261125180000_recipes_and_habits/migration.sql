-- CreateTable
CREATE TABLE "MemberSetting" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "setAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "MemberSetting_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "MemberSetting_societyId_memberId_key_setAt_idx" ON "MemberSetting"("societyId", "memberId", "key", "setAt");

-- CreateIndex
CREATE UNIQUE INDEX "MemberSetting_id_societyId_key" ON "MemberSetting"("id", "societyId");

-- AddForeignKey
ALTER TABLE "MemberSetting" ADD CONSTRAINT "MemberSetting_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- A row is never changed: what is set anew is a new row. It goes with its member's details when those are erased.
CREATE TRIGGER member_setting_written_once BEFORE UPDATE ON "MemberSetting" FOR EACH ROW EXECUTE FUNCTION written_once();
