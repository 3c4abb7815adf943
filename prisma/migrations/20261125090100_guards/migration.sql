-- What the schema language cannot say, and what must hold whatever a process does.
CREATE EXTENSION IF NOT EXISTS btree_gist;

-- ---- ground: positive sizes, no two beds on the same ground on the same day, no plot let twice -----------
ALTER TABLE "Bed" ADD CONSTRAINT bed_size CHECK ("widthCm" > 0 AND "lengthCm" > 0 AND "widthCm" <= 100000 AND "lengthCm" <= 100000);
ALTER TABLE "Bed" ADD CONSTRAINT bed_days CHECK ("retiredOn" IS NULL OR "retiredOn" >= "fromOn");
ALTER TABLE "Bed" ADD CONSTRAINT bed_overlap EXCLUDE USING gist (
  "frameId" WITH =,
  int4range("xCm", "xCm" + "widthCm") WITH &&,
  int4range("yCm", "yCm" + "lengthCm") WITH &&,
  daterange("fromOn", "retiredOn") WITH &&
);
ALTER TABLE "Planting" ADD CONSTRAINT planting_size CHECK ("widthCm" > 0 AND "lengthCm" > 0);
ALTER TABLE "Planting" ADD CONSTRAINT planting_seasons CHECK ("firstSeason" BETWEEN 1900 AND 2200 AND "lastSeason" >= "firstSeason");
ALTER TABLE "GroundWork" ADD CONSTRAINT work_size CHECK ("widthCm" > 0 AND "lengthCm" > 0);
ALTER TABLE "GroundWork" ADD CONSTRAINT work_season CHECK ("season" BETWEEN 1900 AND 2200);
ALTER TABLE "GroundWork" ADD CONSTRAINT work_loads CHECK ("loads" IS NULL OR "loads" >= 0);
ALTER TABLE "Plot" ADD CONSTRAINT plot_area CHECK ("areaCm2" > 0);
ALTER TABLE "Plot" ADD CONSTRAINT plot_sized CHECK ("polygon" IS NOT NULL OR "quarterRods" > 0);
CREATE UNIQUE INDEX plot_number_in_use ON "Plot" ("societyId", "siteId", lower("number")) WHERE "retiredOn" IS NULL;
ALTER TABLE "Tenancy" ADD CONSTRAINT tenancy_days CHECK ("untilOn" IS NULL OR "untilOn" > "fromOn");
ALTER TABLE "Tenancy" ADD CONSTRAINT tenancy_once EXCLUDE USING gist (
  "plotId" WITH =, daterange("fromOn", "untilOn") WITH &&
);
ALTER TABLE "HoldingMember" ADD CONSTRAINT holding_member_days CHECK ("untilOn" IS NULL OR "untilOn" >= "fromOn");
CREATE UNIQUE INDEX holding_member_now ON "HoldingMember" ("holdingId", "memberId") WHERE "untilOn" IS NULL;

-- ---- deliveries: nothing oversold ------------------------------------------------------------------------
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_numbers CHECK (
  "amountThousandths" > 0 AND "densityGPerL" > 0 AND "barrowLitres" > 0 AND "rateGPerM2" > 0 AND "expectedLoads" >= 0
  AND ("capLoads" IS NULL OR "capLoads" > 0) AND "unloadersWanted" >= 0 AND "priceMinor" >= 0);
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_days CHECK ("collectByOn" >= "arrivesOn");
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_heap CHECK ("heapLoads" IS NULL OR "heapLoads" >= 0);
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_not_overshared CHECK ("sharedLoads" >= 0 AND "sharedLoads" <= coalesce("heapLoads", 0));
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_not_overtaken CHECK ("collectedLoads" >= 0 AND "collectedLoads" <= coalesce("heapLoads", 0));
ALTER TABLE "Delivery" ADD CONSTRAINT delivery_lot CHECK (("lotBytesHex" IS NULL) = ("lotCommitment" IS NULL) AND ("lotRevealedAt" IS NULL OR "lotBytesHex" IS NOT NULL));

ALTER TABLE "Booking" ADD CONSTRAINT booking_asked CHECK ("asked" >= 0 AND "asked" <= 9999 AND "needLoads" >= 0);
ALTER TABLE "Booking" ADD CONSTRAINT booking_share CHECK ("share" IS NULL OR ("share" >= 0 AND ("share" <= "asked" OR "share" <= "collectedLoads")));
ALTER TABLE "Booking" ADD CONSTRAINT booking_collected CHECK (
  "beyondLoads" >= 0 AND "collectedLoads" >= "beyondLoads"
  AND "collectedLoads" - "beyondLoads" <= coalesce("share", 0));
ALTER TABLE "Collection" ADD CONSTRAINT collection_loads CHECK ("loads" <> 0 AND ("loads" > 0 OR "reversesId" IS NOT NULL));
ALTER TABLE "Collection" ADD CONSTRAINT collection_reason CHECK (NOT "beyond" OR length(trim(coalesce("reason", ''))) > 0);

-- A collection counts on its delivery and its booking in the same statement; the CHECKs above then refuse
-- whatever would exceed the heap or the share. The row lock on the delivery orders concurrent ticks.
CREATE FUNCTION count_collection() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "Delivery" SET "collectedLoads" = "collectedLoads" + NEW."loads"
    WHERE "id" = NEW."deliveryId" AND "societyId" = NEW."societyId" AND "state" = 'collecting';
  IF NOT FOUND THEN RAISE EXCEPTION 'delivery is not being collected' USING ERRCODE = 'check_violation', CONSTRAINT = 'delivery_collecting'; END IF;
  UPDATE "Booking" SET "collectedLoads" = "collectedLoads" + NEW."loads",
      "beyondLoads" = "beyondLoads" + CASE WHEN NEW."beyond" THEN NEW."loads" ELSE 0 END
    WHERE "id" = NEW."bookingId" AND "deliveryId" = NEW."deliveryId" AND "societyId" = NEW."societyId";
  IF NOT FOUND THEN RAISE EXCEPTION 'booking is of another delivery' USING ERRCODE = 'foreign_key_violation'; END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER collection_counts AFTER INSERT ON "Collection" FOR EACH ROW EXECUTE FUNCTION count_collection();

CREATE FUNCTION count_share() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE "Delivery" SET "sharedLoads" = "sharedLoads" + coalesce(NEW."share", 0) - coalesce(OLD."share", 0)
    WHERE "id" = NEW."deliveryId" AND "societyId" = NEW."societyId";
  RETURN NULL;
END $$;
CREATE TRIGGER share_counts AFTER UPDATE OF "share" ON "Booking" FOR EACH ROW
  WHEN (NEW."share" IS DISTINCT FROM OLD."share") EXECUTE FUNCTION count_share();

-- Credits of a material sum to zero whenever a transaction ends.
CREATE FUNCTION credits_sum_to_zero() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE total numeric;
BEGIN
  SELECT coalesce(sum("changeMillionths"), 0) INTO total FROM "CreditEntry"
    WHERE "societyId" = NEW."societyId" AND "materialKey" = NEW."materialKey";
  IF total <> 0 THEN
    RAISE EXCEPTION 'credits of % do not sum to zero but to %', NEW."materialKey", total USING ERRCODE = 'check_violation', CONSTRAINT = 'credits_sum_to_zero';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER credits_balance AFTER INSERT ON "CreditEntry" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION credits_sum_to_zero();
CREATE UNIQUE INDEX credit_once_per_delivery ON "CreditEntry" ("deliveryId", "holdingId") NULLS NOT DISTINCT WHERE "deliveryId" IS NOT NULL;

-- ---- the book: written once ------------------------------------------------------------------------------
CREATE FUNCTION written_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% rows are never changed or removed', TG_TABLE_NAME USING ERRCODE = 'check_violation', CONSTRAINT = 'written_once';
END $$;
CREATE TRIGGER audit_written_once BEFORE UPDATE OR DELETE ON "AuditRow" FOR EACH ROW EXECUTE FUNCTION written_once();
CREATE TRIGGER credit_written_once BEFORE UPDATE OR DELETE ON "CreditEntry" FOR EACH ROW EXECUTE FUNCTION written_once();
CREATE TRIGGER collection_written_once BEFORE UPDATE OR DELETE ON "Collection" FOR EACH ROW EXECUTE FUNCTION written_once();
CREATE TRIGGER setting_written_once BEFORE UPDATE OR DELETE ON "SocietySetting" FOR EACH ROW EXECUTE FUNCTION written_once();

-- The last secretary cannot go, however two of them try at once: the society's row is the lock.
CREATE FUNCTION secretary_remains() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "Society" WHERE "id" = OLD."societyId" FOR UPDATE;
  IF NOT EXISTS (SELECT 1 FROM "MemberRole" WHERE "societyId" = OLD."societyId" AND "role" = 'secretary') THEN
    RAISE EXCEPTION 'a society keeps at least one secretary' USING ERRCODE = 'check_violation', CONSTRAINT = 'secretary_remains';
  END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER secretary_stays AFTER DELETE ON "MemberRole" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD."role" = 'secretary') EXECUTE FUNCTION secretary_remains();
