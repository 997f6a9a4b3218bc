-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateExtension
CREATE EXTENSION IF NOT EXISTS "pg_trgm";

-- CreateTable
CREATE TABLE "shops" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "shops__pk" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "locations" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "altitude_feet" INTEGER NOT NULL,
    "law_profile" JSON NOT NULL,
    "time_zone" TEXT NOT NULL,

    CONSTRAINT "locations__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "staff" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "name" TEXT NOT NULL,
    "sign_in_name" TEXT NOT NULL,
    "roles" TEXT[],
    "password_hash" TEXT,
    "pin_hash" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,

    CONSTRAINT "staff__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "devices" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "location_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "enrolled_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "devices__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "enrollment_codes" (
    "shop_id" UUID NOT NULL,
    "code_hash" TEXT NOT NULL,
    "location_id" UUID NOT NULL,
    "created_by" JSON NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "enrollment_codes__pk" PRIMARY KEY ("shop_id","code_hash")
);

-- CreateTable
CREATE TABLE "sessions" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "staff_id" UUID NOT NULL,
    "device_id" UUID,
    "kind" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "last_seen_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "sessions__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "sign_in_failures" (
    "shop_id" UUID NOT NULL,
    "who" TEXT NOT NULL,
    "place" TEXT NOT NULL,
    "failures" INTEGER NOT NULL,
    "last_failed_at" TIMESTAMPTZ(3) NOT NULL,
    "blocked_until" TIMESTAMPTZ(3),

    CONSTRAINT "sign_in_failures__pk" PRIMARY KEY ("shop_id","who","place")
);

-- CreateTable
CREATE TABLE "customers" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "name" TEXT NOT NULL,
    "phone" TEXT,
    "email" TEXT,
    "language" TEXT NOT NULL DEFAULT 'en',
    "may_text" BOOLEAN NOT NULL DEFAULT false,
    "may_email" BOOLEAN NOT NULL DEFAULT false,
    "may_call" BOOLEAN NOT NULL DEFAULT false,
    "search_text" TEXT NOT NULL DEFAULT '',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "customers__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "vehicles" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "customer_id" UUID NOT NULL,
    "plate" TEXT,
    "plate_region" TEXT,
    "vin" TEXT,
    "description" TEXT NOT NULL,
    "color" TEXT,
    "notes" TEXT,
    "sheet_id" UUID,
    "plate_normalized" TEXT NOT NULL DEFAULT '',
    "search_text" TEXT NOT NULL DEFAULT '',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "vehicles__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "sheets" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,

    CONSTRAINT "sheets__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "sheet_versions" (
    "shop_id" UUID NOT NULL,
    "sheet_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "body" JSON NOT NULL,
    "created_by" JSON NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sheet_versions__pk" PRIMARY KEY ("shop_id","sheet_id","version")
);

-- CreateTable
CREATE TABLE "setting_versions" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "location_id" UUID,
    "kind" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "body" JSON NOT NULL,
    "created_by" JSON NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "setting_versions__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "instruments" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "location_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "body" JSON NOT NULL,
    "due_on" DATE,
    "cycles" INTEGER NOT NULL DEFAULT 0,
    "quarantined" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "instruments__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "wrench_cycles" (
    "shop_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "instrument_id" UUID NOT NULL,
    "clicks" INTEGER NOT NULL,

    CONSTRAINT "wrench_cycles__pk" PRIMARY KEY ("shop_id","entry_id","line")
);

-- CreateTable
CREATE TABLE "stock_items" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "location_id" UUID NOT NULL,
    "part_number" TEXT NOT NULL,
    "family" JSON NOT NULL,
    "on_hand" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "stock_items__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "stock_movements" (
    "shop_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "stock_item_id" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,

    CONSTRAINT "stock_movements__pk" PRIMARY KEY ("shop_id","entry_id","line")
);

-- CreateTable
CREATE TABLE "order_heads" (
    "shop_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "location_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "hash" TEXT NOT NULL,
    "customer_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL,
    "promised_at" TIMESTAMPTZ(3),
    "waits_here" BOOLEAN NOT NULL,
    "assigned_to" UUID,
    "is_open" BOOLEAN NOT NULL,
    "sealed" BOOLEAN NOT NULL,
    "agenda" JSON NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "order_heads__pk" PRIMARY KEY ("shop_id","order_id")
);

-- CreateTable
CREATE TABLE "entries" (
    "shop_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "seq" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "payload" JSON NOT NULL,
    "given" JSON NOT NULL,
    "written_by" JSON NOT NULL,
    "rests_on" UUID[],
    "device_id" UUID,
    "written_at" TIMESTAMPTZ(3) NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL,
    "previous_hash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    CONSTRAINT "entries__pk" PRIMARY KEY ("shop_id","order_id","seq")
);

-- CreateTable
CREATE TABLE "refused_entries" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "body" JSON NOT NULL,
    "code" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL,
    "written_by" JSON NOT NULL,
    "device_id" UUID,
    "settled_at" TIMESTAMPTZ(3),

    CONSTRAINT "refused_entries__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "personal_texts" (
    "shop_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "order_id" UUID,
    "salt" BYTEA NOT NULL,
    "text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "personal_texts__pk" PRIMARY KEY ("shop_id","digest")
);

-- CreateTable
CREATE TABLE "blobs" (
    "shop_id" UUID NOT NULL,
    "sha256" TEXT NOT NULL,
    "media_type" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "blobs__pk" PRIMARY KEY ("shop_id","sha256")
);

-- CreateTable
CREATE TABLE "erasures" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "order_id" UUID,
    "subject" TEXT NOT NULL,
    "digests" TEXT[],
    "reason" TEXT NOT NULL,
    "erased_by" JSON NOT NULL,
    "erased_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "erasures__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "customer_links" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),
    "created_by" JSON NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "customer_links__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "link_openings" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "link_id" UUID NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "link_openings__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "link_sessions" (
    "shop_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "link_id" UUID NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "link_sessions__pk" PRIMARY KEY ("shop_id","token_hash")
);

-- CreateTable
CREATE TABLE "sealed_reports" (
    "shop_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "order_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "sha256" TEXT NOT NULL,
    "sealed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sealed_reports__pk" PRIMARY KEY ("shop_id","number")
);

-- CreateTable
CREATE TABLE "seen_sensors" (
    "shop_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "wheel" TEXT NOT NULL,
    "sensor_id" TEXT NOT NULL,
    "how" TEXT NOT NULL,

    CONSTRAINT "seen_sensors__pk" PRIMARY KEY ("shop_id","entry_id")
);

-- CreateTable
CREATE TABLE "idempotency_keys" (
    "shop_id" UUID NOT NULL,
    "actor" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "request_hash" TEXT NOT NULL,
    "status" INTEGER NOT NULL,
    "reply" JSON NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "idempotency_keys__pk" PRIMARY KEY ("shop_id","actor","key")
);

-- CreateTable
CREATE TABLE "order_numbers" (
    "shop_id" UUID NOT NULL,
    "series" TEXT NOT NULL,
    "next" INTEGER NOT NULL,

    CONSTRAINT "order_numbers__pk" PRIMARY KEY ("shop_id","series")
);

-- CreateIndex
CREATE UNIQUE INDEX "staff__sign_in_name" ON "staff"("shop_id", "sign_in_name");

-- CreateIndex
CREATE INDEX "devices__by_location" ON "devices"("shop_id", "location_id");

-- CreateIndex
CREATE UNIQUE INDEX "devices__token" ON "devices"("token_hash");

-- CreateIndex
CREATE INDEX "enrollment_codes__by_location" ON "enrollment_codes"("shop_id", "location_id");

-- CreateIndex
CREATE INDEX "sessions__by_staff" ON "sessions"("shop_id", "staff_id");

-- CreateIndex
CREATE INDEX "sessions__by_device" ON "sessions"("shop_id", "device_id");

-- CreateIndex
CREATE UNIQUE INDEX "sessions__token" ON "sessions"("token_hash");

-- CreateIndex
CREATE INDEX "customers__search" ON "customers" USING GIN ("search_text" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "customers__by_name" ON "customers"("shop_id", "name", "id");

-- CreateIndex
CREATE INDEX "vehicles__search" ON "vehicles" USING GIN ("search_text" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "vehicles__by_customer" ON "vehicles"("shop_id", "customer_id");

-- CreateIndex
CREATE INDEX "vehicles__by_plate" ON "vehicles"("shop_id", "plate_normalized");

-- CreateIndex
CREATE INDEX "vehicles__by_sheet" ON "vehicles"("shop_id", "sheet_id");

-- CreateIndex
CREATE UNIQUE INDEX "vehicles__vin_once" ON "vehicles"("shop_id", "vin");

-- CreateIndex
CREATE INDEX "instruments__by_location" ON "instruments"("shop_id", "location_id");

-- CreateIndex
CREATE UNIQUE INDEX "instruments__code" ON "instruments"("shop_id", "code");

-- CreateIndex
CREATE INDEX "wrench_cycles__by_instrument" ON "wrench_cycles"("shop_id", "instrument_id");

-- CreateIndex
CREATE UNIQUE INDEX "stock_items__part_number" ON "stock_items"("shop_id", "location_id", "part_number");

-- CreateIndex
CREATE INDEX "stock_movements__by_item" ON "stock_movements"("shop_id", "stock_item_id");

-- CreateIndex
CREATE INDEX "order_heads__by_opening" ON "order_heads"("shop_id", "location_id", "opened_at", "order_id");

-- CreateIndex
CREATE INDEX "order_heads__by_customer" ON "order_heads"("shop_id", "customer_id");

-- CreateIndex
CREATE INDEX "order_heads__by_vehicle" ON "order_heads"("shop_id", "vehicle_id");

-- CreateIndex
CREATE INDEX "order_heads__by_change" ON "order_heads"("shop_id", "updated_at");

-- CreateIndex
CREATE UNIQUE INDEX "order_heads__number" ON "order_heads"("shop_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "entries__id" ON "entries"("shop_id", "id");

-- CreateIndex
CREATE INDEX "refused_entries__by_order" ON "refused_entries"("shop_id", "order_id");

-- CreateIndex
CREATE INDEX "personal_texts__by_order" ON "personal_texts"("shop_id", "order_id");

-- CreateIndex
CREATE INDEX "customer_links__by_order" ON "customer_links"("shop_id", "order_id");

-- CreateIndex
CREATE UNIQUE INDEX "customer_links__token" ON "customer_links"("token_hash");

-- CreateIndex
CREATE INDEX "link_openings__by_link" ON "link_openings"("shop_id", "link_id");

-- CreateIndex
CREATE INDEX "link_sessions__by_link" ON "link_sessions"("shop_id", "link_id");

-- CreateIndex
CREATE INDEX "sealed_reports__by_order" ON "sealed_reports"("shop_id", "order_id");

-- CreateIndex
CREATE INDEX "sealed_reports__by_digest" ON "sealed_reports"("shop_id", "sha256");

-- CreateIndex
CREATE UNIQUE INDEX "sealed_reports__entry_once" ON "sealed_reports"("shop_id", "entry_id");

-- CreateIndex
CREATE INDEX "seen_sensors__by_sensor" ON "seen_sensors"("shop_id", "sensor_id");

-- CreateIndex
CREATE INDEX "seen_sensors__search" ON "seen_sensors" USING GIN ("sensor_id" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "seen_sensors__by_order" ON "seen_sensors"("shop_id", "order_id");

-- CreateIndex
CREATE INDEX "seen_sensors__by_vehicle" ON "seen_sensors"("shop_id", "vehicle_id");

-- CreateIndex
CREATE INDEX "idempotency_keys__by_age" ON "idempotency_keys"("created_at");

-- AddForeignKey
ALTER TABLE "locations" ADD CONSTRAINT "locations__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "staff" ADD CONSTRAINT "staff__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "devices" ADD CONSTRAINT "devices__location" FOREIGN KEY ("shop_id", "location_id") REFERENCES "locations"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "enrollment_codes" ADD CONSTRAINT "enrollment_codes__location" FOREIGN KEY ("shop_id", "location_id") REFERENCES "locations"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sessions" ADD CONSTRAINT "sessions__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sessions" ADD CONSTRAINT "sessions__device" FOREIGN KEY ("shop_id", "device_id") REFERENCES "devices"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "customers" ADD CONSTRAINT "customers__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicles" ADD CONSTRAINT "vehicles__customer" FOREIGN KEY ("shop_id", "customer_id") REFERENCES "customers"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicles" ADD CONSTRAINT "vehicles__sheet" FOREIGN KEY ("shop_id", "sheet_id") REFERENCES "sheets"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sheets" ADD CONSTRAINT "sheets__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sheet_versions" ADD CONSTRAINT "sheet_versions__sheet" FOREIGN KEY ("shop_id", "sheet_id") REFERENCES "sheets"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "setting_versions" ADD CONSTRAINT "setting_versions__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "setting_versions" ADD CONSTRAINT "setting_versions__location" FOREIGN KEY ("shop_id", "location_id") REFERENCES "locations"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "instruments" ADD CONSTRAINT "instruments__location" FOREIGN KEY ("shop_id", "location_id") REFERENCES "locations"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "wrench_cycles" ADD CONSTRAINT "wrench_cycles__entry" FOREIGN KEY ("shop_id", "entry_id") REFERENCES "entries"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "wrench_cycles" ADD CONSTRAINT "wrench_cycles__instrument" FOREIGN KEY ("shop_id", "instrument_id") REFERENCES "instruments"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_items" ADD CONSTRAINT "stock_items__location" FOREIGN KEY ("shop_id", "location_id") REFERENCES "locations"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_movements" ADD CONSTRAINT "stock_movements__entry" FOREIGN KEY ("shop_id", "entry_id") REFERENCES "entries"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_movements" ADD CONSTRAINT "stock_movements__stock_item" FOREIGN KEY ("shop_id", "stock_item_id") REFERENCES "stock_items"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_heads" ADD CONSTRAINT "order_heads__location" FOREIGN KEY ("shop_id", "location_id") REFERENCES "locations"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_heads" ADD CONSTRAINT "order_heads__customer" FOREIGN KEY ("shop_id", "customer_id") REFERENCES "customers"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_heads" ADD CONSTRAINT "order_heads__vehicle" FOREIGN KEY ("shop_id", "vehicle_id") REFERENCES "vehicles"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entries" ADD CONSTRAINT "entries__order" FOREIGN KEY ("shop_id", "order_id") REFERENCES "order_heads"("shop_id", "order_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "customer_links" ADD CONSTRAINT "customer_links__order" FOREIGN KEY ("shop_id", "order_id") REFERENCES "order_heads"("shop_id", "order_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "link_openings" ADD CONSTRAINT "link_openings__link" FOREIGN KEY ("shop_id", "link_id") REFERENCES "customer_links"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "link_sessions" ADD CONSTRAINT "link_sessions__link" FOREIGN KEY ("shop_id", "link_id") REFERENCES "customer_links"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sealed_reports" ADD CONSTRAINT "sealed_reports__order" FOREIGN KEY ("shop_id", "order_id") REFERENCES "order_heads"("shop_id", "order_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sealed_reports" ADD CONSTRAINT "sealed_reports__entry" FOREIGN KEY ("shop_id", "entry_id") REFERENCES "entries"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "seen_sensors" ADD CONSTRAINT "seen_sensors__order" FOREIGN KEY ("shop_id", "order_id") REFERENCES "order_heads"("shop_id", "order_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "seen_sensors" ADD CONSTRAINT "seen_sensors__vehicle" FOREIGN KEY ("shop_id", "vehicle_id") REFERENCES "vehicles"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "seen_sensors" ADD CONSTRAINT "seen_sensors__entry" FOREIGN KEY ("shop_id", "entry_id") REFERENCES "entries"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_numbers" ADD CONSTRAINT "order_numbers__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
-- Prisma's schema cannot say what follows. Each name is <table>__<what>.

-- Words and numbers that mean something
ALTER TABLE shops ADD CONSTRAINT shops__name_given CHECK (name <> '');
ALTER TABLE locations
  ADD CONSTRAINT locations__name_given CHECK (name <> ''),
  ADD CONSTRAINT locations__altitude_on_earth CHECK (altitude_feet BETWEEN -1500 AND 20000);
ALTER TABLE staff
  ADD CONSTRAINT staff__name_given CHECK (name <> '' AND sign_in_name <> ''),
  ADD CONSTRAINT staff__sign_in_name_small CHECK (sign_in_name = lower(sign_in_name)),
  ADD CONSTRAINT staff__roles_known CHECK (
    roles IS NOT NULL
    AND cardinality(roles) > 0
    AND array_position(roles, NULL) IS NULL
    AND roles <@ ARRAY['advisor', 'technician', 'lead', 'manager', 'owner']
  ),
  ADD CONSTRAINT staff__version_counts CHECK (version >= 1),
  ADD CONSTRAINT staff__passwords_hashed CHECK (password_hash LIKE '$argon2id$%' AND pin_hash LIKE '$argon2id$%');
ALTER TABLE devices
  ADD CONSTRAINT devices__name_given CHECK (name <> ''),
  ADD CONSTRAINT devices__token_is_digest CHECK (token_hash ~ '^[0-9a-f]{64}$');
ALTER TABLE sessions
  ADD CONSTRAINT sessions__kind_known CHECK (kind IN ('desk', 'bay')),
  ADD CONSTRAINT sessions__bay_has_tablet CHECK ((kind = 'bay') = (device_id IS NOT NULL)),
  ADD CONSTRAINT sessions__ends_after_start CHECK (expires_at > created_at),
  ADD CONSTRAINT sessions__token_is_digest CHECK (token_hash ~ '^[0-9a-f]{64}$');
ALTER TABLE sign_in_failures ADD CONSTRAINT sign_in_failures__counts CHECK (failures >= 0);
ALTER TABLE customers
  ADD CONSTRAINT customers__name_given CHECK (name <> ''),
  ADD CONSTRAINT customers__language_known CHECK (language IN ('en', 'es')),
  ADD CONSTRAINT customers__version_counts CHECK (version >= 1);
ALTER TABLE vehicles
  ADD CONSTRAINT vehicles__description_given CHECK (description <> ''),
  ADD CONSTRAINT vehicles__vin_has_17 CHECK (vin ~ '^[A-HJ-NPR-Z0-9]{17}$'),
  ADD CONSTRAINT vehicles__version_counts CHECK (version >= 1);
ALTER TABLE sheet_versions ADD CONSTRAINT sheet_versions__version_counts CHECK (version >= 1);
ALTER TABLE setting_versions
  ADD CONSTRAINT setting_versions__version_counts CHECK (version >= 1),
  ADD CONSTRAINT setting_versions__kind_given CHECK (kind <> '');
ALTER TABLE instruments
  ADD CONSTRAINT instruments__kind_known CHECK (kind IN ('wrench', 'gauge', 'reader')),
  ADD CONSTRAINT instruments__cycles_count CHECK (cycles >= 0),
  ADD CONSTRAINT instruments__version_counts CHECK (version >= 1);
ALTER TABLE wrench_cycles ADD CONSTRAINT wrench_cycles__clicks_count CHECK (clicks > 0 AND line >= 0);
ALTER TABLE stock_items ADD CONSTRAINT stock_items__part_number_given CHECK (part_number <> '');
ALTER TABLE stock_movements
  ADD CONSTRAINT stock_movements__quantity_moves CHECK (quantity <> 0 AND line >= 0),
  ADD CONSTRAINT stock_movements__kind_given CHECK (kind <> '');
ALTER TABLE order_heads
  ADD CONSTRAINT order_heads__seq_counts CHECK (seq >= 1),
  ADD CONSTRAINT order_heads__hash_is_digest CHECK (hash ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT order_heads__number_given CHECK (number <> '');
ALTER TABLE entries
  ADD CONSTRAINT entries__seq_counts CHECK (seq >= 1 AND version >= 1),
  ADD CONSTRAINT entries__hash_is_digest CHECK (hash ~ '^[0-9a-f]{64}$' AND previous_hash ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT entries__first_has_none_before CHECK ((seq = 1) = (previous_hash = repeat('0', 64)));
ALTER TABLE refused_entries ADD CONSTRAINT refused_entries__reason_given CHECK (code <> '' AND words <> '');
ALTER TABLE personal_texts
  ADD CONSTRAINT personal_texts__digest_is_digest CHECK (digest ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT personal_texts__salt_has_32_bytes CHECK (octet_length(salt) = 32);
ALTER TABLE blobs ADD CONSTRAINT blobs__digest_matches CHECK (sha256 = encode(sha256(bytes), 'hex'));
ALTER TABLE erasures ADD CONSTRAINT erasures__reason_given CHECK (reason <> '' AND subject <> '');
ALTER TABLE customer_links ADD CONSTRAINT customer_links__token_is_digest CHECK (token_hash ~ '^[0-9a-f]{64}$');
ALTER TABLE idempotency_keys
  ADD CONSTRAINT idempotency_keys__key_given CHECK (key <> '' AND actor <> ''),
  ADD CONSTRAINT idempotency_keys__status_is_http CHECK (status BETWEEN 100 AND 599);
ALTER TABLE order_numbers ADD CONSTRAINT order_numbers__counts CHECK (next >= 1);

-- What is written once stays as it was written
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is append-only: % is refused', TG_TABLE_NAME, TG_OP
    USING ERRCODE = 'restrict_violation', CONSTRAINT = TG_TABLE_NAME || '__append_only', TABLE = TG_TABLE_NAME;
END
$$;
CREATE TRIGGER entries__append_only BEFORE UPDATE OR DELETE ON entries
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER entries__no_truncate BEFORE TRUNCATE ON entries
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sheet_versions__append_only BEFORE UPDATE OR DELETE ON sheet_versions
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sheet_versions__no_truncate BEFORE TRUNCATE ON sheet_versions
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER setting_versions__append_only BEFORE UPDATE OR DELETE ON setting_versions
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER setting_versions__no_truncate BEFORE TRUNCATE ON setting_versions
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- What searches look through is kept by the database, so that no writer can forget it
CREATE FUNCTION fill_customer_search() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.search_text := lower(NEW.name) || ' ' || regexp_replace(coalesce(NEW.phone, ''), '[^0-9]', '', 'g');
  RETURN NEW;
END
$$;
CREATE TRIGGER customers__fill_search BEFORE INSERT OR UPDATE ON customers
  FOR EACH ROW EXECUTE FUNCTION fill_customer_search();
CREATE FUNCTION fill_vehicle_search() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.plate_normalized := translate(regexp_replace(upper(coalesce(NEW.plate, '')), '[^A-Z0-9]', '', 'g'), 'OI', '01');
  NEW.search_text := lower(NEW.plate_normalized || ' ' || coalesce(NEW.vin, '') || ' ' || NEW.description);
  RETURN NEW;
END
$$;
CREATE TRIGGER vehicles__fill_search BEFORE INSERT OR UPDATE ON vehicles
  FOR EACH ROW EXECUTE FUNCTION fill_vehicle_search();

-- Rules and lists that hold for some rows only
CREATE UNIQUE INDEX setting_versions__one_of_shop ON setting_versions (shop_id, kind, version)
  WHERE location_id IS NULL;
CREATE UNIQUE INDEX setting_versions__one_of_location ON setting_versions (shop_id, location_id, kind, version)
  WHERE location_id IS NOT NULL;
CREATE INDEX order_heads__open ON order_heads (shop_id, location_id, promised_at, order_id) WHERE is_open;
CREATE INDEX order_heads__open_of_person ON order_heads (shop_id, assigned_to) WHERE is_open;
CREATE INDEX refused_entries__unsettled ON refused_entries (shop_id, received_at) WHERE settled_at IS NULL;
CREATE INDEX sessions__alive ON sessions (shop_id, staff_id) WHERE ended_at IS NULL;
