-- AlterTable
ALTER TABLE "SocietySetting" ADD COLUMN     "ballotId" UUID;

-- CreateTable
CREATE TABLE "Ballot" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'draft',
    "number" INTEGER,
    "title" TEXT NOT NULL,
    "body" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "handsBy" TEXT NOT NULL,
    "quorumKind" TEXT NOT NULL,
    "quorum" INTEGER NOT NULL,
    "carriedBy" TEXT NOT NULL,
    "closesAt" TIMESTAMPTZ(3) NOT NULL,
    "settingKey" TEXT,
    "settingValue" JSONB,
    "settingFrom" DATE,
    "putByMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "openedAt" TIMESTAMPTZ(3),
    "entitled" INTEGER,
    "closedAt" TIMESTAMPTZ(3),
    "result" JSONB,
    "applied" TEXT,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "Ballot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BallotChoice" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "ballotId" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "stands" TEXT NOT NULL,
    "words" TEXT NOT NULL,

    CONSTRAINT "BallotChoice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BallotRoll" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "ballotId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "holdingId" UUID,

    CONSTRAINT "BallotRoll_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Hand" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "ballotId" UUID NOT NULL,
    "choiceId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "holdingId" UUID,
    "raisedByMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "nth" BIGSERIAL NOT NULL,

    CONSTRAINT "Hand_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Ballot_societyId_state_closesAt_idx" ON "Ballot"("societyId", "state", "closesAt");

-- CreateIndex
CREATE INDEX "Ballot_putByMemberId_societyId_idx" ON "Ballot"("putByMemberId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Ballot_id_societyId_key" ON "Ballot"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Ballot_societyId_number_key" ON "Ballot"("societyId", "number");

-- CreateIndex
CREATE INDEX "BallotChoice_ballotId_societyId_idx" ON "BallotChoice"("ballotId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "BallotChoice_id_societyId_key" ON "BallotChoice"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "BallotChoice_id_ballotId_key" ON "BallotChoice"("id", "ballotId");

-- CreateIndex
CREATE UNIQUE INDEX "BallotChoice_ballotId_position_key" ON "BallotChoice"("ballotId", "position");

-- CreateIndex
CREATE INDEX "BallotRoll_ballotId_societyId_idx" ON "BallotRoll"("ballotId", "societyId");

-- CreateIndex
CREATE INDEX "BallotRoll_memberId_societyId_idx" ON "BallotRoll"("memberId", "societyId");

-- CreateIndex
CREATE INDEX "BallotRoll_holdingId_societyId_idx" ON "BallotRoll"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "BallotRoll_id_societyId_key" ON "BallotRoll"("id", "societyId");

-- CreateIndex
CREATE INDEX "Hand_ballotId_societyId_nth_idx" ON "Hand"("ballotId", "societyId", "nth");

-- CreateIndex
CREATE INDEX "Hand_choiceId_ballotId_idx" ON "Hand"("choiceId", "ballotId");

-- CreateIndex
CREATE INDEX "Hand_memberId_societyId_idx" ON "Hand"("memberId", "societyId");

-- CreateIndex
CREATE INDEX "Hand_holdingId_societyId_idx" ON "Hand"("holdingId", "societyId");

-- CreateIndex
CREATE INDEX "Hand_raisedByMemberId_societyId_idx" ON "Hand"("raisedByMemberId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Hand_id_societyId_key" ON "Hand"("id", "societyId");

-- AddForeignKey
ALTER TABLE "SocietySetting" ADD CONSTRAINT "SocietySetting_ballotId_societyId_fkey" FOREIGN KEY ("ballotId", "societyId") REFERENCES "Ballot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Ballot" ADD CONSTRAINT "Ballot_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Ballot" ADD CONSTRAINT "Ballot_putByMemberId_societyId_fkey" FOREIGN KEY ("putByMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BallotChoice" ADD CONSTRAINT "BallotChoice_ballotId_societyId_fkey" FOREIGN KEY ("ballotId", "societyId") REFERENCES "Ballot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BallotRoll" ADD CONSTRAINT "BallotRoll_ballotId_societyId_fkey" FOREIGN KEY ("ballotId", "societyId") REFERENCES "Ballot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BallotRoll" ADD CONSTRAINT "BallotRoll_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BallotRoll" ADD CONSTRAINT "BallotRoll_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hand" ADD CONSTRAINT "Hand_ballotId_societyId_fkey" FOREIGN KEY ("ballotId", "societyId") REFERENCES "Ballot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hand" ADD CONSTRAINT "Hand_choiceId_ballotId_fkey" FOREIGN KEY ("choiceId", "ballotId") REFERENCES "BallotChoice"("id", "ballotId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hand" ADD CONSTRAINT "Hand_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hand" ADD CONSTRAINT "Hand_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Hand" ADD CONSTRAINT "Hand_raisedByMemberId_societyId_fkey" FOREIGN KEY ("raisedByMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;



-- What the schema language cannot say.
ALTER TABLE "Ballot" ADD CONSTRAINT ballot_words CHECK (
  length(trim("title")) > 0 AND "kind" IN ('motion', 'choice') AND "handsBy" IN ('member', 'holding')
  AND "carriedBy" IN ('more', 'two-thirds') AND "quorumKind" IN ('number', 'percent')
  AND "quorum" >= 0 AND ("quorumKind" = 'number' OR "quorum" <= 100)
);
ALTER TABLE "Ballot" ADD CONSTRAINT ballot_state CHECK (
  (CASE "state"
    WHEN 'draft' THEN "openedAt" IS NULL AND "closedAt" IS NULL AND "withdrawnAt" IS NULL
    WHEN 'open' THEN "openedAt" IS NOT NULL AND "closedAt" IS NULL AND "withdrawnAt" IS NULL
    WHEN 'closed' THEN "openedAt" IS NOT NULL AND "closedAt" >= "closesAt" AND "withdrawnAt" IS NULL
    WHEN 'withdrawn' THEN "closedAt" IS NULL AND "withdrawnAt" IS NOT NULL
    ELSE false
  END)
  AND ("closedAt" IS NULL) = ("result" IS NULL) AND ("closedAt" IS NULL) = ("number" IS NULL)
  AND ("openedAt" IS NULL) = ("entitled" IS NULL) AND ("withdrawnAt" IS NULL) = ("withdrawnWhy" IS NULL)
);
ALTER TABLE "Ballot" ADD CONSTRAINT ballot_setting CHECK (
  ("settingKey" IS NULL) = ("settingValue" IS NULL) AND ("settingKey" IS NULL) = ("settingFrom" IS NULL)
  AND ("settingKey" IS NULL OR "kind" = 'motion') AND ("applied" IS NULL OR "settingKey" IS NOT NULL)
);
ALTER TABLE "BallotChoice" ADD CONSTRAINT choice_stands CHECK ("stands" IN ('for', 'against', 'choice', 'abstain') AND "position" >= 0);
-- A setting is set by a count of hands once.
CREATE UNIQUE INDEX setting_of_ballot ON "SocietySetting" ("ballotId") WHERE "ballotId" IS NOT NULL;
-- And nobody stands on a roll twice.
CREATE UNIQUE INDEX roll_once ON "BallotRoll" ("ballotId", "memberId", coalesce("holdingId", "memberId"));

-- The question stands once it is open, the result once it is closed, and a result counts the hands that lie there.
CREATE FUNCTION ballot_kept() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  moves CONSTANT text[] := ARRAY['state', 'number', 'closedAt', 'result', 'applied', 'withdrawnAt', 'withdrawnWhy'];
  raised bigint;
BEGIN
  IF TG_OP = 'INSERT' THEN
    IF NEW."state" = 'draft' THEN RETURN NEW; END IF;
    RAISE EXCEPTION 'a question begins as a draft' USING ERRCODE = 'check_violation', CONSTRAINT = 'ballot_kept';
  END IF;
  IF TG_OP = 'DELETE' OR OLD."state" IN ('closed', 'withdrawn') THEN
    RAISE EXCEPTION 'what was put to a count of hands stays as it is' USING ERRCODE = 'check_violation', CONSTRAINT = 'ballot_kept';
  END IF;
  IF OLD."state" = 'open' AND (NEW."state" = 'draft' OR to_jsonb(NEW) - moves <> to_jsonb(OLD) - moves) THEN
    RAISE EXCEPTION 'an open question is not changed' USING ERRCODE = 'check_violation', CONSTRAINT = 'ballot_kept';
  END IF;
  IF NEW."state" = 'closed' THEN
    SELECT count(DISTINCT coalesce("holdingId", "memberId")) INTO raised FROM "Hand" WHERE "ballotId" = OLD."id";
    IF OLD."state" <> 'open' OR (NEW."result" ->> 'hands')::bigint IS DISTINCT FROM raised THEN
      RAISE EXCEPTION 'a result counts the hands that were raised' USING ERRCODE = 'check_violation', CONSTRAINT = 'ballot_kept';
    END IF;
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER ballot_kept BEFORE INSERT OR UPDATE OR DELETE ON "Ballot" FOR EACH ROW EXECUTE FUNCTION ballot_kept();

-- Choices and the roll are made with the question, and stand with it.
CREATE FUNCTION with_the_draft() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  ballot uuid := CASE TG_OP WHEN 'DELETE' THEN OLD."ballotId" ELSE NEW."ballotId" END;
BEGIN
  PERFORM 1 FROM "Ballot" WHERE "id" = ballot AND "state" = 'draft' FOR SHARE;
  IF NOT FOUND THEN
    RAISE EXCEPTION 'an open question is not changed' USING ERRCODE = 'check_violation', CONSTRAINT = 'ballot_kept';
  END IF;
  RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER choice_kept BEFORE INSERT OR UPDATE OR DELETE ON "BallotChoice" FOR EACH ROW EXECUTE FUNCTION with_the_draft();
CREATE TRIGGER roll_kept BEFORE INSERT ON "BallotRoll" FOR EACH ROW EXECUTE FUNCTION with_the_draft();
CREATE TRIGGER roll_written_once BEFORE UPDATE OR DELETE ON "BallotRoll" FOR EACH ROW EXECUTE FUNCTION written_once();

-- A hand waits for whoever closes, and closing for the hands under way: none comes after the result, and none is missing in it.
CREATE FUNCTION hand_in_time() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "Ballot" WHERE "id" = NEW."ballotId" FOR SHARE;
  PERFORM 1 FROM "Ballot" WHERE "id" = NEW."ballotId" AND "state" = 'open' AND NEW."at" < "closesAt";
  IF NOT FOUND THEN
    RAISE EXCEPTION 'no hand is raised before it opens or after it closes' USING ERRCODE = 'check_violation', CONSTRAINT = 'hand_in_time';
  END IF;
  PERFORM 1 FROM "BallotRoll" WHERE "ballotId" = NEW."ballotId" AND "memberId" = NEW."memberId"
    AND "holdingId" IS NOT DISTINCT FROM NEW."holdingId";
  IF NOT FOUND THEN
    RAISE EXCEPTION 'no hand is raised by who is not on the roll' USING ERRCODE = 'check_violation', CONSTRAINT = 'hand_on_roll';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER hand_in_time BEFORE INSERT ON "Hand" FOR EACH ROW EXECUTE FUNCTION hand_in_time();
CREATE TRIGGER hand_written_once BEFORE UPDATE OR DELETE ON "Hand" FOR EACH ROW EXECUTE FUNCTION written_once();
