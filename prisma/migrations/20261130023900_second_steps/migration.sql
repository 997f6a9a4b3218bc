-- CreateTable
CREATE TABLE "second_steps" (
    "shop_id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "secret_box" TEXT NOT NULL,
    "begun_at" TIMESTAMPTZ(3) NOT NULL,
    "confirmed_at" TIMESTAMPTZ(3),
    "last_step" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "second_steps__pk" PRIMARY KEY ("shop_id","staff_id")
);

-- CreateTable
CREATE TABLE "recovery_codes" (
    "shop_id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "code_hash" TEXT NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "recovery_codes__pk" PRIMARY KEY ("shop_id","staff_id","code_hash")
);

-- AddForeignKey
ALTER TABLE "second_steps" ADD CONSTRAINT "second_steps__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recovery_codes" ADD CONSTRAINT "recovery_codes__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE recovery_codes ADD CONSTRAINT recovery_codes__code_is_digest CHECK (code_hash ~ '^[0-9a-f]{64}$');
