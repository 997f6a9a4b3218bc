-- CreateTable
CREATE TABLE "passkeys" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "credential_id" TEXT NOT NULL,
    "public_key" TEXT NOT NULL,
    "sign_count" BIGINT NOT NULL,
    "rp_id" TEXT NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),

    CONSTRAINT "passkeys__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "passkey_challenges" (
    "shop_id" UUID NOT NULL,
    "holder" TEXT NOT NULL,
    "purpose" TEXT NOT NULL,
    "challenge" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "passkey_challenges__pk" PRIMARY KEY ("shop_id","holder","purpose")
);

-- CreateIndex
CREATE INDEX "passkeys__by_staff" ON "passkeys"("shop_id", "staff_id");

-- CreateIndex
CREATE UNIQUE INDEX "passkeys__credential" ON "passkeys"("shop_id", "credential_id");

-- CreateIndex
CREATE INDEX "passkey_challenges__oldest" ON "passkey_challenges"("shop_id", "expires_at");

-- AddForeignKey
ALTER TABLE "passkeys" ADD CONSTRAINT "passkeys__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "passkey_challenges" ADD CONSTRAINT "passkey_challenges__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE passkeys ADD CONSTRAINT passkeys__name_given CHECK (name <> '');
ALTER TABLE passkeys ADD CONSTRAINT passkeys__sign_count_counts CHECK (sign_count >= 0);
