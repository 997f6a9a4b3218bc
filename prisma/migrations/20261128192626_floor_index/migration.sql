-- CreateIndex
CREATE INDEX "order_heads__floor" ON "order_heads"("shop_id", "is_open", "opened_at", "order_id");
