-- AlterTable
ALTER TABLE "AuditRow" ADD COLUMN     "actorRoles" "Role"[];

-- CreateIndex
CREATE INDEX "AuditRow_societyId_forHoldingId_at_idx" ON "AuditRow"("societyId", "forHoldingId", "at");


