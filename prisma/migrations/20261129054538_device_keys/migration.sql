-- AlterTable
ALTER TABLE "shops" ADD COLUMN     "offline_hours" INTEGER NOT NULL DEFAULT 72;

-- AlterTable
ALTER TABLE "staff" ADD COLUMN     "pin_version" INTEGER NOT NULL DEFAULT 1;

-- CreateTable
CREATE TABLE "device_keys" (
    "shop_id" UUID NOT NULL,
    "device_id" UUID NOT NULL,
    "public_key" TEXT NOT NULL,
    "registered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "device_keys__pk" PRIMARY KEY ("shop_id","device_id")
);

-- AddForeignKey
ALTER TABLE "device_keys" ADD CONSTRAINT "device_keys__device" FOREIGN KEY ("shop_id", "device_id") REFERENCES "devices"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
-- Written once: what a tablet signed is checked against its key for as long as the record is kept.
ALTER TABLE device_keys ADD CONSTRAINT device_keys__public_key_is_base64 CHECK (public_key ~ '^[A-Za-z0-9+/]{120,128}={0,2}$');
CREATE TRIGGER device_keys__append_only BEFORE UPDATE OR DELETE ON device_keys
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER device_keys__no_truncate BEFORE TRUNCATE ON device_keys
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
-- Thirty days at most: a tablet that was lost must not keep what it holds for longer.
ALTER TABLE shops ADD CONSTRAINT shops__offline_hours_bounded CHECK (offline_hours BETWEEN 1 AND 720);
ALTER TABLE staff ADD CONSTRAINT staff__pin_version_counts CHECK (pin_version >= 1);
-- In the database, so that no way of changing a PIN can forget it.
CREATE FUNCTION raise_pin_version() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.pin_hash IS DISTINCT FROM OLD.pin_hash THEN
    NEW.pin_version := OLD.pin_version + 1;
  END IF;
  RETURN NEW;
END
$$;
CREATE TRIGGER staff__raise_pin_version BEFORE UPDATE ON staff
  FOR EACH ROW EXECUTE FUNCTION raise_pin_version();
