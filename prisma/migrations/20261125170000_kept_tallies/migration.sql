-- What a frame's ground comes to in a season is worked out once and kept until the ground, or a rule, changes.
ALTER TABLE "Frame" ADD COLUMN "revision" BIGINT NOT NULL DEFAULT 0;

-- CreateTable
CREATE TABLE "KeptTally" (
    "societyId" UUID NOT NULL,
    "frameId" UUID NOT NULL,
    "season" INTEGER NOT NULL,
    "revision" BIGINT NOT NULL,
    "rules" TEXT NOT NULL,
    "tally" JSONB NOT NULL,

    CONSTRAINT "KeptTally_pkey" PRIMARY KEY ("frameId","season")
);

-- CreateIndex
CREATE INDEX "KeptTally_societyId_frameId_idx" ON "KeptTally"("societyId", "frameId");

-- AddForeignKey
ALTER TABLE "KeptTally" ADD CONSTRAINT "KeptTally_frameId_societyId_fkey" FOREIGN KEY ("frameId", "societyId") REFERENCES "Frame"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Whatever writes to the records of some ground raises the revision of its frame in the same transaction. Frames are
-- taken in one order, so that two such writes wait for each other and do not lock each other out.
CREATE FUNCTION raise_revisions(frames UUID[]) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "Frame" WHERE "id" = ANY(frames) ORDER BY "id" FOR NO KEY UPDATE;
  UPDATE "Frame" SET "revision" = "revision" + 1 WHERE "id" = ANY(frames);
END $$;

CREATE FUNCTION ground_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM raise_revisions(array(SELECT DISTINCT "frameId" FROM changed));
  RETURN NULL;
END $$;

-- Plots that were joined keep each bed in the frame it had: a bed's frame need not be its plot's.
CREATE FUNCTION bed_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM raise_revisions(array(SELECT "frameId" FROM changed UNION
    SELECT p."frameId" FROM changed c JOIN "Plot" p ON p."id" = c."plotId" AND p."societyId" = c."societyId"));
  RETURN NULL;
END $$;

CREATE FUNCTION plot_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM raise_revisions(array(SELECT "frameId" FROM changed UNION
    SELECT b."frameId" FROM changed c JOIN "Bed" b ON b."plotId" = c."id" AND b."societyId" = c."societyId"));
  RETURN NULL;
END $$;

CREATE TRIGGER planting_written AFTER INSERT ON "Planting" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION ground_changed();
CREATE TRIGGER planting_rewritten AFTER UPDATE ON "Planting" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION ground_changed();
CREATE TRIGGER planting_removed AFTER DELETE ON "Planting" REFERENCING OLD TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION ground_changed();
CREATE TRIGGER trouble_written AFTER INSERT ON "Trouble" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION ground_changed();
CREATE TRIGGER trouble_rewritten AFTER UPDATE ON "Trouble" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION ground_changed();
CREATE TRIGGER trouble_removed AFTER DELETE ON "Trouble" REFERENCING OLD TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION ground_changed();
CREATE TRIGGER bed_written AFTER INSERT ON "Bed" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION bed_changed();
CREATE TRIGGER bed_rewritten AFTER UPDATE ON "Bed" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION bed_changed();
CREATE TRIGGER bed_removed AFTER DELETE ON "Bed" REFERENCING OLD TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION bed_changed();
CREATE TRIGGER plot_written AFTER INSERT ON "Plot" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION plot_changed();
CREATE TRIGGER plot_rewritten AFTER UPDATE ON "Plot" REFERENCING NEW TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION plot_changed();
CREATE TRIGGER plot_removed AFTER DELETE ON "Plot" REFERENCING OLD TABLE AS changed FOR EACH STATEMENT EXECUTE FUNCTION plot_changed();
