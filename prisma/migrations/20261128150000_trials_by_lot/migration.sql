-- CreateTable
CREATE TABLE "Trial" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "question" TEXT NOT NULL,
    "cropKey" TEXT NOT NULL,
    "season" INTEGER NOT NULL,
    "treatmentA" TEXT NOT NULL,
    "treatmentB" TEXT NOT NULL,
    "measure" TEXT NOT NULL,
    "joinByOn" DATE NOT NULL,
    "resultsByOn" DATE NOT NULL,
    "leastPlots" INTEGER NOT NULL,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "lotBytesHex" TEXT NOT NULL,
    "lotCommitment" TEXT NOT NULL,
    "lotText" TEXT,
    "laidOutAt" TIMESTAMPTZ(3),
    "calledOffAt" TIMESTAMPTZ(3),
    "calledOffWhy" TEXT,
    "calledOffByMemberId" UUID,

    CONSTRAINT "Trial_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TrialBlock" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "trialId" UUID NOT NULL,
    "plotId" UUID NOT NULL,
    "holdingId" UUID NOT NULL,
    "byMemberId" UUID NOT NULL,
    "joinedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "leftAt" TIMESTAMPTZ(3),
    "leftWhy" TEXT,
    "treatedOn" DATE,

    CONSTRAINT "TrialBlock_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TrialGround" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "blockId" UUID NOT NULL,
    "nth" INTEGER NOT NULL,
    "frameId" UUID NOT NULL,
    "bedId" UUID NOT NULL,
    "piece" TEXT NOT NULL,
    "xCm" INTEGER NOT NULL,
    "yCm" INTEGER NOT NULL,
    "widthCm" INTEGER NOT NULL,
    "lengthCm" INTEGER NOT NULL,
    "treatment" TEXT,

    CONSTRAINT "TrialGround_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TrialResult" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "groundId" UUID NOT NULL,
    "source" TEXT NOT NULL,
    "amount" INTEGER NOT NULL,
    "areaCm2" INTEGER NOT NULL,
    "byMemberId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "TrialResult_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Trial_societyId_joinByOn_idx" ON "Trial"("societyId", "joinByOn");

-- CreateIndex
CREATE INDEX "Trial_byMemberId_societyId_idx" ON "Trial"("byMemberId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Trial_id_societyId_key" ON "Trial"("id", "societyId");

-- CreateIndex
CREATE INDEX "TrialBlock_trialId_societyId_idx" ON "TrialBlock"("trialId", "societyId");

-- CreateIndex
CREATE INDEX "TrialBlock_plotId_societyId_idx" ON "TrialBlock"("plotId", "societyId");

-- CreateIndex
CREATE INDEX "TrialBlock_holdingId_societyId_idx" ON "TrialBlock"("holdingId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "TrialBlock_id_societyId_key" ON "TrialBlock"("id", "societyId");

-- CreateIndex
CREATE INDEX "TrialGround_bedId_societyId_idx" ON "TrialGround"("bedId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "TrialGround_id_societyId_key" ON "TrialGround"("id", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "TrialGround_blockId_nth_key" ON "TrialGround"("blockId", "nth");

-- CreateIndex
CREATE INDEX "TrialResult_groundId_societyId_at_idx" ON "TrialResult"("groundId", "societyId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "TrialResult_id_societyId_key" ON "TrialResult"("id", "societyId");

-- AddForeignKey
ALTER TABLE "Trial" ADD CONSTRAINT "Trial_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Trial" ADD CONSTRAINT "Trial_byMemberId_societyId_fkey" FOREIGN KEY ("byMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrialBlock" ADD CONSTRAINT "TrialBlock_trialId_societyId_fkey" FOREIGN KEY ("trialId", "societyId") REFERENCES "Trial"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrialBlock" ADD CONSTRAINT "TrialBlock_plotId_societyId_fkey" FOREIGN KEY ("plotId", "societyId") REFERENCES "Plot"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrialBlock" ADD CONSTRAINT "TrialBlock_holdingId_societyId_fkey" FOREIGN KEY ("holdingId", "societyId") REFERENCES "Holding"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrialGround" ADD CONSTRAINT "TrialGround_blockId_societyId_fkey" FOREIGN KEY ("blockId", "societyId") REFERENCES "TrialBlock"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrialGround" ADD CONSTRAINT "TrialGround_bedId_societyId_fkey" FOREIGN KEY ("bedId", "societyId") REFERENCES "Bed"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TrialResult" ADD CONSTRAINT "TrialResult_groundId_societyId_fkey" FOREIGN KEY ("groundId", "societyId") REFERENCES "TrialGround"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;




-- What the schema language cannot say.
ALTER TABLE "Trial" ADD CONSTRAINT trial_facts CHECK (
  "measure" IN ('grams', 'pieces') AND "leastPlots" >= 3 AND "joinByOn" < "resultsByOn"
  AND length(trim("question")) > 0 AND length(trim("treatmentA")) > 0 AND length(trim("treatmentB")) > 0
  AND "lotBytesHex" ~ '^[0-9a-f]{64}$' AND "lotCommitment" ~ '^[0-9a-f]{64}$');
ALTER TABLE "Trial" ADD CONSTRAINT trial_ended CHECK (
  ("laidOutAt" IS NULL) = ("lotText" IS NULL)
  AND ("calledOffWhy" IS NULL) = ("calledOffByMemberId" IS NULL)
  AND ("calledOffWhy" IS NULL OR "calledOffAt" IS NOT NULL)
  AND ("laidOutAt" IS NULL OR "calledOffAt" IS NULL OR "calledOffWhy" IS NOT NULL));
ALTER TABLE "TrialBlock" ADD CONSTRAINT trial_block_left CHECK ("leftWhy" IS NULL OR "leftAt" IS NOT NULL);
ALTER TABLE "TrialGround" ADD CONSTRAINT trial_ground_facts CHECK (
  "nth" IN (1, 2) AND "piece" IN ('whole', 'first', 'second') AND "treatment" IN ('A', 'B') AND "widthCm" > 0 AND "lengthCm" > 0);
ALTER TABLE "TrialResult" ADD CONSTRAINT trial_result_facts CHECK ("source" IN ('harvests', 'typed') AND "amount" >= 0 AND "areaCm2" > 0);
-- A plot is one block of a trial, and of its two pieces each treatment has one.
CREATE UNIQUE INDEX trial_block_once ON "TrialBlock" ("trialId", "plotId") WHERE "leftAt" IS NULL;
CREATE UNIQUE INDEX trial_treatment_once ON "TrialGround" ("blockId", "treatment");

-- What a trial asks, and how, stays as it was when joining opened; it is laid out once, and called off once.
CREATE FUNCTION trial_fixed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR OLD."calledOffAt" IS NOT NULL
    OR to_jsonb(NEW) - '{lotText,laidOutAt,calledOffAt,calledOffWhy,calledOffByMemberId}'::text[]
      IS DISTINCT FROM to_jsonb(OLD) - '{lotText,laidOutAt,calledOffAt,calledOffWhy,calledOffByMemberId}'::text[]
    OR (OLD."laidOutAt" IS NOT NULL AND (NEW."laidOutAt", NEW."lotText") IS DISTINCT FROM (OLD."laidOutAt", OLD."lotText"))
  THEN RAISE EXCEPTION 'a trial stays as it was opened' USING ERRCODE = 'check_violation', CONSTRAINT = 'trial_fixed'; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER trial_fixed BEFORE UPDATE OR DELETE ON "Trial" FOR EACH ROW EXECUTE FUNCTION trial_fixed();

-- Nobody joins after the last day of joining, once the lot is drawn, or once it is called off.
CREATE FUNCTION trial_joining() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE trial "Trial"; zone text; block "TrialBlock";
BEGIN
  IF TG_TABLE_NAME = 'TrialGround' THEN
    SELECT * INTO block FROM "TrialBlock" WHERE "id" = NEW."blockId";
  ELSE block := NEW; END IF;
  SELECT * INTO trial FROM "Trial" WHERE "id" = block."trialId" FOR SHARE;
  SELECT "timeZone" INTO zone FROM "Society" WHERE "id" = trial."societyId";
  IF trial."laidOutAt" IS NOT NULL OR trial."calledOffAt" IS NOT NULL OR (block."joinedAt" AT TIME ZONE zone)::date > trial."joinByOn"
  THEN RAISE EXCEPTION 'joining is closed' USING ERRCODE = 'check_violation', CONSTRAINT = 'trial_joining'; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER trial_joining BEFORE INSERT ON "TrialBlock" FOR EACH ROW EXECUTE FUNCTION trial_joining();
CREATE TRIGGER trial_joining BEFORE INSERT ON "TrialGround" FOR EACH ROW EXECUTE FUNCTION trial_joining();

-- A block keeps its plot and its holding, and who has left does not come back; ground gets its treatment once, with the lot.
CREATE FUNCTION trial_block_fixed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR to_jsonb(NEW) - '{leftAt,leftWhy,treatedOn}'::text[] IS DISTINCT FROM to_jsonb(OLD) - '{leftAt,leftWhy,treatedOn}'::text[]
    OR OLD."leftAt" IS NOT NULL
  THEN RAISE EXCEPTION 'a block stays as it joined' USING ERRCODE = 'check_violation', CONSTRAINT = 'trial_block_fixed'; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER trial_block_fixed BEFORE UPDATE OR DELETE ON "TrialBlock" FOR EACH ROW EXECUTE FUNCTION trial_block_fixed();
CREATE FUNCTION trial_layout_fixed() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE laid timestamptz;
BEGIN
  SELECT t."laidOutAt" INTO laid FROM "Trial" t JOIN "TrialBlock" b ON b."trialId" = t."id" WHERE b."id" = OLD."blockId";
  IF TG_OP = 'DELETE' OR laid IS NOT NULL OR OLD."treatment" IS NOT NULL
    OR to_jsonb(NEW) - 'treatment' IS DISTINCT FROM to_jsonb(OLD) - 'treatment'
  THEN RAISE EXCEPTION 'a layout is never changed' USING ERRCODE = 'check_violation', CONSTRAINT = 'trial_layout_fixed'; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER trial_layout_fixed BEFORE UPDATE OR DELETE ON "TrialGround" FOR EACH ROW EXECUTE FUNCTION trial_layout_fixed();

-- Results come from ground that is in a trial which is laid out, until its last day; none is changed, a newer one stands above it.
CREATE FUNCTION trial_results_open() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE trial "Trial"; zone text; gone timestamptz;
BEGIN
  SELECT t.* INTO trial FROM "Trial" t JOIN "TrialBlock" b ON b."trialId" = t."id" JOIN "TrialGround" g ON g."blockId" = b."id"
    WHERE g."id" = NEW."groundId" FOR SHARE OF t;
  SELECT b."leftAt" INTO gone FROM "TrialBlock" b JOIN "TrialGround" g ON g."blockId" = b."id" WHERE g."id" = NEW."groundId";
  SELECT "timeZone" INTO zone FROM "Society" WHERE "id" = trial."societyId";
  IF trial."laidOutAt" IS NULL OR trial."calledOffAt" IS NOT NULL OR gone IS NOT NULL OR (NEW."at" AT TIME ZONE zone)::date > trial."resultsByOn"
  THEN RAISE EXCEPTION 'no results now' USING ERRCODE = 'check_violation', CONSTRAINT = 'trial_results_open'; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER trial_results_open BEFORE INSERT ON "TrialResult" FOR EACH ROW EXECUTE FUNCTION trial_results_open();
CREATE TRIGGER trial_result_written_once BEFORE UPDATE OR DELETE ON "TrialResult" FOR EACH ROW EXECUTE FUNCTION written_once();
