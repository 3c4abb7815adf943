-- What was said of sharing results stands; the next word is a new row.
CREATE TRIGGER sharing_written_once BEFORE UPDATE OR DELETE ON "ResultSharing" FOR EACH ROW EXECUTE FUNCTION written_once();
