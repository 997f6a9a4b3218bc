-- CreateTable
CREATE TABLE "write_up_drafts" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "body" JSON NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "write_up_drafts__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateIndex
CREATE INDEX "write_up_drafts__newest" ON "write_up_drafts"("shop_id", "updated_at");

-- CreateIndex
CREATE INDEX "write_up_drafts__by_staff" ON "write_up_drafts"("shop_id", "staff_id");

-- AddForeignKey
ALTER TABLE "write_up_drafts" ADD CONSTRAINT "write_up_drafts__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
