-- A sealed report's row and the note of an erasure stay as they were written, like entries. What an erasure may delete
-- (texts, blobs) and what is rebuilt (heads) can still not be emptied at one stroke.
CREATE TRIGGER sealed_reports__append_only BEFORE UPDATE OR DELETE ON sealed_reports
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sealed_reports__no_truncate BEFORE TRUNCATE ON sealed_reports
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER erasures__append_only BEFORE UPDATE OR DELETE ON erasures
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER erasures__no_truncate BEFORE TRUNCATE ON erasures
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER personal_texts__no_truncate BEFORE TRUNCATE ON personal_texts
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER blobs__no_truncate BEFORE TRUNCATE ON blobs
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER order_heads__no_truncate BEFORE TRUNCATE ON order_heads
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
