-- CreateTable
CREATE TABLE "digests" (
    "shop_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "hash" TEXT NOT NULL,
    "day" DATE NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "digests__pk" PRIMARY KEY ("shop_id","number")
);

-- Written by hand
ALTER TABLE digests
  ADD CONSTRAINT digests__number_counts CHECK (number >= 1),
  ADD CONSTRAINT digests__hash_is_digest CHECK (hash ~ '^[0-9a-f]{64}$');
CREATE TRIGGER digests__append_only BEFORE UPDATE OR DELETE ON digests
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER digests__no_truncate BEFORE TRUNCATE ON digests
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
