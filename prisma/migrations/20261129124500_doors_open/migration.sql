-- AlterTable
ALTER TABLE "staff" ADD COLUMN     "password_version" INTEGER NOT NULL DEFAULT 1;

-- Written by hand
ALTER TABLE staff ADD CONSTRAINT staff__password_version_counts CHECK (password_version >= 1);
-- Beside that of the PIN, so that a person's history says when each was changed, and never what it was.
CREATE OR REPLACE FUNCTION raise_pin_version() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.pin_hash IS DISTINCT FROM OLD.pin_hash THEN
    NEW.pin_version := OLD.pin_version + 1;
  END IF;
  IF NEW.password_hash IS DISTINCT FROM OLD.password_hash THEN
    NEW.password_version := OLD.password_version + 1;
  END IF;
  RETURN NEW;
END
$$;
-- A shop that has an owner keeps one, whoever writes here. Two who each remove one of the last two owners at once wait for
-- one another at the shop's row, and the later one sees what the earlier one left.
CREATE FUNCTION keep_an_owner() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF NOT (OLD.active AND 'owner' = ANY (OLD.roles)) THEN RETURN NULL; END IF;
  PERFORM 1 FROM shops WHERE id = OLD.shop_id FOR NO KEY UPDATE;
  IF NOT EXISTS (SELECT 1 FROM staff WHERE shop_id = OLD.shop_id AND active AND 'owner' = ANY (roles)) THEN
    RAISE EXCEPTION 'the shop would have no owner'
      USING ERRCODE = 'restrict_violation', CONSTRAINT = 'staff__keeps_an_owner', TABLE = 'staff';
  END IF;
  RETURN NULL;
END
$$;
CREATE TRIGGER staff__keeps_an_owner AFTER DELETE OR UPDATE OF shop_id, active, roles ON staff
  FOR EACH ROW EXECUTE FUNCTION keep_an_owner();
