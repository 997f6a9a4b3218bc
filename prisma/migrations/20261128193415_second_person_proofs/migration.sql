-- CreateTable
CREATE TABLE "second_person_proofs" (
    "shop_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "staff_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "second_person_proofs__pk" PRIMARY KEY ("shop_id","token_hash")
);

-- CreateIndex
CREATE INDEX "second_person_proofs__by_staff" ON "second_person_proofs"("shop_id", "staff_id");

-- CreateIndex
CREATE INDEX "second_person_proofs__by_entry" ON "second_person_proofs"("shop_id", "entry_id");

-- AddForeignKey
ALTER TABLE "second_person_proofs" ADD CONSTRAINT "second_person_proofs__staff" FOREIGN KEY ("shop_id", "staff_id") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
-- Appended and never changed, like the entries that these agreements are for.
ALTER TABLE second_person_proofs
  ADD CONSTRAINT second_person_proofs__digests CHECK (token_hash ~ '^[0-9a-f]{64}$' AND digest ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT second_person_proofs__ends_after_start CHECK (expires_at > created_at);
CREATE TRIGGER second_person_proofs__append_only BEFORE UPDATE OR DELETE ON second_person_proofs
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER second_person_proofs__no_truncate BEFORE TRUNCATE ON second_person_proofs
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
