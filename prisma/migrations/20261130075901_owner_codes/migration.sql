-- CreateTable
CREATE TABLE "owner_codes" (
    "shop_id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "code_hash" TEXT NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "owner_codes__pk" PRIMARY KEY ("shop_id","staff_id")
);

-- AddForeignKey
ALTER TABLE "owner_codes" ADD CONSTRAINT "owner_codes__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE owner_codes ADD CONSTRAINT owner_codes__code_is_digest CHECK (code_hash ~ '^[0-9a-f]{64}$');
