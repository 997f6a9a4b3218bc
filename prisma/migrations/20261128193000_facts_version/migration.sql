-- What appending needs to know of a shop (people, instruments, parts held back, each place's law) is kept in memory by
-- every process. This number says whether what a process keeps is still true: an append names the number it used.
ALTER TABLE "shops" ADD COLUMN "facts_version" INTEGER NOT NULL DEFAULT 1;

-- Written by hand
-- Raised by the database in the transaction of the change itself, so that no writer can forget it. What appends change
-- (clicks of a wrench, stock on hand) does not raise it. The definer's rights: who changes a person need not own the shop.
CREATE FUNCTION raise_facts_version() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  UPDATE shops SET facts_version = facts_version + 1
  WHERE id = CASE WHEN TG_OP = 'DELETE' THEN OLD.shop_id ELSE NEW.shop_id END;
  RETURN NULL;
END
$$;
CREATE TRIGGER staff__raise_facts AFTER INSERT OR DELETE OR UPDATE OF shop_id, id, roles, active ON staff
  FOR EACH ROW EXECUTE FUNCTION raise_facts_version();
CREATE TRIGGER instruments__raise_facts
  AFTER INSERT OR DELETE OR UPDATE OF shop_id, id, location_id, kind, body, due_on, quarantined ON instruments
  FOR EACH ROW EXECUTE FUNCTION raise_facts_version();
CREATE TRIGGER stock_items__raise_facts
  AFTER INSERT OR DELETE OR UPDATE OF shop_id, id, location_id, part_number, family ON stock_items
  FOR EACH ROW EXECUTE FUNCTION raise_facts_version();
CREATE TRIGGER locations__raise_facts AFTER INSERT OR DELETE OR UPDATE OF shop_id, id, law_profile ON locations
  FOR EACH ROW EXECUTE FUNCTION raise_facts_version();
ALTER TABLE shops ADD CONSTRAINT shops__facts_version_counts CHECK (facts_version >= 1);
