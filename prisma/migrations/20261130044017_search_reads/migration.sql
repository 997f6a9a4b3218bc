-- DropIndex
DROP INDEX "customers__by_survivor";

-- DropIndex
DROP INDEX "vehicles__by_customer";

-- DropIndex
DROP INDEX "vehicles__by_survivor";

-- CreateIndex
CREATE INDEX "vehicles__by_customer" ON "vehicles"("shop_id", "customer_id", "survivor_id", "id");

-- Written by hand
-- Few records are merged: who survives, and what was merged into it, is read from small indexes alone, also for the foreign
-- keys. Their conditions differ in words, so that no plan that was made while both are small reads one for the other's question.
CREATE INDEX customers__merged ON customers (shop_id, id, survivor_id) WHERE coalesce(survivor_id, id) <> id;
CREATE INDEX customers__by_survivor ON customers (shop_id, survivor_id, id) WHERE survivor_id IS NOT NULL;
CREATE INDEX vehicles__merged ON vehicles (shop_id, id, survivor_id) WHERE coalesce(survivor_id, id) <> id;
CREATE INDEX vehicles__by_survivor ON vehicles (shop_id, survivor_id, id) WHERE survivor_id IS NOT NULL;
-- A vehicle's open order, without a look at its ended ones.
CREATE INDEX order_heads__open_of_vehicle ON order_heads (shop_id, vehicle_id, opened_at, order_id) WHERE is_open;
