-- AlterTable
ALTER TABLE "sessions" ADD COLUMN     "address" TEXT,
ADD COLUMN     "browser" TEXT;

-- CreateTable
CREATE TABLE "known_browsers" (
    "shop_id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "known_since" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "known_browsers__pk" PRIMARY KEY ("shop_id","staff_id","token_hash")
);

-- CreateTable
CREATE TABLE "security_events" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "kind" TEXT NOT NULL,
    "staff_id" UUID,
    "about_id" UUID,
    "device_id" UUID,
    "address" TEXT,
    "details" JSON NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "security_events__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateIndex
CREATE INDEX "security_events__newest" ON "security_events"("shop_id", "at");

-- CreateIndex
CREATE INDEX "security_events__oldest" ON "security_events"("recorded_at");

-- AddForeignKey
ALTER TABLE "known_browsers" ADD CONSTRAINT "known_browsers__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "security_events" ADD CONSTRAINT "security_events__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE known_browsers ADD CONSTRAINT known_browsers__token_is_digest CHECK (token_hash ~ '^[0-9a-f]{64}$');
ALTER TABLE security_events ADD CONSTRAINT security_events__kind_given CHECK (kind <> '');
CREATE TRIGGER security_events__append_only BEFORE UPDATE ON security_events
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
-- What is older than 400 days is forgotten, by the database's own clock, so that a program that says another time forgets
-- nothing sooner. The service itself may not delete here.
CREATE FUNCTION forget_old_security_events() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  DELETE FROM security_events WHERE recorded_at < now() - interval '400 days';
  RETURN NULL;
END
$$;
CREATE TRIGGER security_events__forget AFTER INSERT ON security_events
  FOR EACH STATEMENT EXECUTE FUNCTION forget_old_security_events();
