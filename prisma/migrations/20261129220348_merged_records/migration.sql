-- DropIndex
DROP INDEX "vehicles__vin_once";

-- AlterTable
ALTER TABLE "customers" ADD COLUMN     "survivor_id" UUID;

-- AlterTable
ALTER TABLE "vehicles" ADD COLUMN     "survivor_id" UUID;

-- CreateTable
CREATE TABLE "record_merges" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "subject" TEXT NOT NULL,
    "merged_id" UUID NOT NULL,
    "survivor_id" UUID NOT NULL,
    "before" JSON NOT NULL,
    "after" JSON NOT NULL,
    "made_by" UUID NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,
    "undone_by" UUID,
    "undone_at" TIMESTAMPTZ(3),

    CONSTRAINT "record_merges__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateIndex
CREATE INDEX "record_merges__by_survivor" ON "record_merges"("shop_id", "survivor_id");

-- CreateIndex
CREATE INDEX "record_merges__by_merged" ON "record_merges"("shop_id", "merged_id");

-- CreateIndex
CREATE INDEX "record_merges__by_maker" ON "record_merges"("shop_id", "made_by");

-- CreateIndex
CREATE INDEX "record_merges__by_undoer" ON "record_merges"("shop_id", "undone_by");

-- CreateIndex
CREATE INDEX "customers__by_survivor" ON "customers"("shop_id", "survivor_id");

-- CreateIndex
CREATE INDEX "vehicles__by_survivor" ON "vehicles"("shop_id", "survivor_id");

-- AddForeignKey
ALTER TABLE "customers" ADD CONSTRAINT "customers__survivor" FOREIGN KEY ("shop_id", "survivor_id") REFERENCES "customers"("shop_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "vehicles" ADD CONSTRAINT "vehicles__survivor" FOREIGN KEY ("shop_id", "survivor_id") REFERENCES "vehicles"("shop_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "record_merges" ADD CONSTRAINT "record_merges__made_by" FOREIGN KEY ("shop_id", "made_by") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "record_merges" ADD CONSTRAINT "record_merges__undone_by" FOREIGN KEY ("shop_id", "undone_by") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- Written by hand
-- A VIN belongs to one vehicle; a record that was merged keeps what it held.
CREATE UNIQUE INDEX "vehicles__vin_once" ON "vehicles"("shop_id", "vin") WHERE survivor_id IS NULL;

ALTER TABLE customers ADD CONSTRAINT customers__survivor_is_another CHECK (survivor_id <> id);
ALTER TABLE vehicles ADD CONSTRAINT vehicles__survivor_is_another CHECK (survivor_id <> id);

ALTER TABLE record_merges ADD CONSTRAINT record_merges__subject_known CHECK (subject IN ('customer', 'vehicle'));
ALTER TABLE record_merges ADD CONSTRAINT record_merges__two_records CHECK (merged_id <> survivor_id);
ALTER TABLE record_merges ADD CONSTRAINT record_merges__undone CHECK ((undone_at IS NULL) = (undone_by IS NULL));
-- A record is merged into one other at a time.
CREATE UNIQUE INDEX record_merges__once ON record_merges (shop_id, subject, merged_id) WHERE undone_at IS NULL;

-- Every record of the customer or the vehicle that this one is, the surviving one first.
CREATE FUNCTION same_customer(shop UUID, customer UUID) RETURNS SETOF UUID LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT coalesce(survivor_id, id) FROM customers WHERE shop_id = shop AND id = customer
  UNION ALL
  SELECT other.id FROM customers AS own JOIN customers AS other
    ON other.shop_id = own.shop_id AND other.survivor_id = coalesce(own.survivor_id, own.id)
    WHERE own.shop_id = shop AND own.id = customer
$$;
CREATE FUNCTION same_vehicle(shop UUID, vehicle UUID) RETURNS SETOF UUID LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT coalesce(survivor_id, id) FROM vehicles WHERE shop_id = shop AND id = vehicle
  UNION ALL
  SELECT other.id FROM vehicles AS own JOIN vehicles AS other
    ON other.shop_id = own.shop_id AND other.survivor_id = coalesce(own.survivor_id, own.id)
    WHERE own.shop_id = shop AND own.id = vehicle
$$;
