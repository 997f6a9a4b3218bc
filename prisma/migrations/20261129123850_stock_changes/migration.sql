-- AlterTable
ALTER TABLE "stock_items" ADD COLUMN     "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT '1970-01-01 00:00:00+00'::timestamp with time zone,
ADD COLUMN     "version" INTEGER NOT NULL DEFAULT 1;

-- CreateTable
CREATE TABLE "stock_changes" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "stock_item_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL,
    "cores" INTEGER NOT NULL DEFAULT 0,
    "lot" TEXT,
    "words" TEXT,
    "transfer_id" UUID,
    "to_item_id" UUID,
    "written_by" JSON NOT NULL,
    "written_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "stock_changes__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateIndex
CREATE INDEX "stock_changes__by_item" ON "stock_changes"("shop_id", "stock_item_id", "written_at");

-- CreateIndex
CREATE UNIQUE INDEX "stock_changes__transfer_once" ON "stock_changes"("shop_id", "transfer_id", "kind");

-- AddForeignKey
ALTER TABLE "stock_changes" ADD CONSTRAINT "stock_changes__stock_item" FOREIGN KEY ("shop_id", "stock_item_id") REFERENCES "stock_items"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- Written by hand
ALTER TABLE stock_items ADD CONSTRAINT stock_items__version_counts CHECK (version >= 1);
ALTER TABLE stock_changes
  ADD CONSTRAINT stock_changes__kind_known CHECK (
    kind IN ('opened', 'received', 'counted', 'scrapped', 'sent', 'arrived', 'core-returned')),
  ADD CONSTRAINT stock_changes__moves CHECK (quantity <> 0 OR kind IN ('counted', 'arrived', 'core-returned')),
  ADD CONSTRAINT stock_changes__lot_trimmed CHECK (lot <> '' AND lot = btrim(lot)),
  ADD CONSTRAINT stock_changes__transfer_named CHECK ((transfer_id IS NOT NULL) = (kind IN ('sent', 'arrived')));
CREATE TRIGGER stock_changes__append_only BEFORE UPDATE OR DELETE ON stock_changes
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER stock_changes__no_truncate BEFORE TRUNCATE ON stock_changes
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- A lot as it is compared: without blanks at its ends, and without case.
CREATE FUNCTION lot_key(lot text) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE
  AS $$ SELECT upper(btrim(lot, E' \t\n\r\u00a0')) $$;
CREATE INDEX entries__lot ON entries (shop_id, lot_key(payload ->> 'lot')) WHERE kind = 'part.drawn';
CREATE INDEX stock_changes__lot ON stock_changes (shop_id, lot_key(lot)) WHERE lot IS NOT NULL;

-- What was there before this record began.
INSERT INTO stock_changes (shop_id, id, stock_item_id, kind, quantity, written_by, written_at)
SELECT s.shop_id, gen_random_uuid(), s.id, 'opened', s.on_hand - coalesce(m.moved, 0), '{"kind":"system"}', now()
FROM stock_items s
LEFT JOIN (SELECT shop_id, stock_item_id, sum(quantity)::int AS moved FROM stock_movements
  GROUP BY shop_id, stock_item_id) m ON m.shop_id = s.shop_id AND m.stock_item_id = s.id
WHERE s.on_hand <> coalesce(m.moved, 0);
