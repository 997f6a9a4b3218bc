-- CreateTable
CREATE TABLE "contact_sides" (
    "shop_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "order_id" UUID,
    "salt" BYTEA NOT NULL,
    "text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "contact_sides__pk" PRIMARY KEY ("shop_id","digest")
);

-- CreateTable
CREATE TABLE "money_sides" (
    "shop_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "order_id" UUID,
    "salt" BYTEA NOT NULL,
    "text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "money_sides__pk" PRIMARY KEY ("shop_id","digest")
);

-- CreateTable
CREATE TABLE "shown_sides" (
    "shop_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "order_id" UUID,
    "salt" BYTEA NOT NULL,
    "text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "shown_sides__pk" PRIMARY KEY ("shop_id","digest")
);

-- CreateIndex
CREATE INDEX "contact_sides__by_order" ON "contact_sides"("shop_id", "order_id");

-- CreateIndex
CREATE INDEX "money_sides__by_order" ON "money_sides"("shop_id", "order_id");

-- CreateIndex
CREATE INDEX "shown_sides__by_order" ON "shown_sides"("shop_id", "order_id");

-- Written by hand: checks that the schema file cannot say
ALTER TABLE contact_sides
  ADD CONSTRAINT contact_sides__digest_is_digest CHECK (digest ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT contact_sides__salt_has_32_bytes CHECK (octet_length(salt) = 32);
ALTER TABLE money_sides
  ADD CONSTRAINT money_sides__digest_is_digest CHECK (digest ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT money_sides__salt_has_32_bytes CHECK (octet_length(salt) = 32);
ALTER TABLE shown_sides
  ADD CONSTRAINT shown_sides__digest_is_digest CHECK (digest ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT shown_sides__salt_has_32_bytes CHECK (octet_length(salt) = 32);
