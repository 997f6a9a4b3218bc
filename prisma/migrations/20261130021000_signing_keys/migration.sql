-- CreateTable
CREATE TABLE "signing_keys" (
    "shop_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "certificate" TEXT NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "signing_keys__pk" PRIMARY KEY ("shop_id","number")
);

-- CreateIndex
CREATE UNIQUE INDEX "signing_keys__once" ON "signing_keys"("shop_id", "fingerprint");

-- AddForeignKey
ALTER TABLE "signing_keys" ADD CONSTRAINT "signing_keys__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE signing_keys ADD CONSTRAINT signing_keys__fingerprint_is_digest CHECK (fingerprint ~ '^[0-9a-f]{64}$');
ALTER TABLE signing_keys ADD CONSTRAINT signing_keys__number_counts CHECK (number >= 1);
CREATE TRIGGER signing_keys__append_only BEFORE UPDATE OR DELETE ON signing_keys
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
