-- How members pay what they owe, in the treasurer's words.
ALTER TABLE "Society" ADD COLUMN     "payNote" TEXT;

ALTER TABLE "LedgerEntry" ADD CONSTRAINT ledger_kinds CHECK (
  "kind" IN ('purchase', 'charge', 'payment', 'transfer', 'correction') AND length(trim("words")) > 0);

-- An entry is written whole: no line is added to one that was there before.
CREATE FUNCTION ledger_line_with_entry() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM "LedgerEntry" WHERE "id" = NEW."entryId" AND xmin = pg_current_xact_id()::xid) THEN
    RAISE EXCEPTION 'ledger entry % was written before', NEW."entryId" USING ERRCODE = 'check_violation', CONSTRAINT = 'ledger_line_with_entry';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER ledger_line_with_entry BEFORE INSERT ON "LedgerLine" FOR EACH ROW EXECUTE FUNCTION ledger_line_with_entry();

-- A correction stands, and is written on the day of what it takes back or later.
CREATE FUNCTION ledger_correction() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "LedgerEntry" WHERE "id" = NEW."reversesId" AND ("kind" = 'correction' OR "on" > NEW."on")) THEN
    RAISE EXCEPTION 'ledger entry % cannot take back %', NEW."id", NEW."reversesId" USING ERRCODE = 'check_violation', CONSTRAINT = 'ledger_correction';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER ledger_correction BEFORE INSERT ON "LedgerEntry" FOR EACH ROW
  WHEN (NEW."reversesId" IS NOT NULL) EXECUTE FUNCTION ledger_correction();
