-- CreateTable
CREATE TABLE "order_holders" (
    "shop_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "device_id" UUID NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "order_holders__pk" PRIMARY KEY ("shop_id","order_id","device_id")
);

-- CreateIndex
CREATE INDEX "order_holders__by_device" ON "order_holders"("shop_id", "device_id");

-- AddForeignKey
ALTER TABLE "order_holders" ADD CONSTRAINT "order_holders__device" FOREIGN KEY ("shop_id", "device_id") REFERENCES "devices"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
