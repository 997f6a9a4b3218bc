-- AlterTable
ALTER TABLE "devices" ADD COLUMN     "version" INTEGER NOT NULL DEFAULT 1;

-- AlterTable
ALTER TABLE "locations" ADD COLUMN     "address" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "bays" INTEGER NOT NULL DEFAULT 0,
ADD COLUMN     "hours" JSON NOT NULL DEFAULT '[null,null,null,null,null,null,null]',
ADD COLUMN     "version" INTEGER NOT NULL DEFAULT 1;

-- CreateTable
CREATE TABLE "record_versions" (
    "shop_id" UUID NOT NULL,
    "subject" TEXT NOT NULL,
    "subject_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "body" JSON NOT NULL,
    "created_by" JSON NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "record_versions__pk" PRIMARY KEY ("shop_id","subject","subject_id","version")
);

-- AddForeignKey
ALTER TABLE "record_versions" ADD CONSTRAINT "record_versions__shop" FOREIGN KEY ("shop_id") REFERENCES "shops"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE record_versions
  ADD CONSTRAINT record_versions__version_counts CHECK (version >= 1),
  ADD CONSTRAINT record_versions__subject_given CHECK (subject <> '');
ALTER TABLE locations
  ADD CONSTRAINT locations__version_counts CHECK (version >= 1),
  ADD CONSTRAINT locations__bays_count CHECK (bays BETWEEN 0 AND 200);
ALTER TABLE devices ADD CONSTRAINT devices__version_counts CHECK (version >= 1);
CREATE TRIGGER record_versions__append_only BEFORE UPDATE OR DELETE ON record_versions
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER record_versions__no_truncate BEFORE TRUNCATE ON record_versions
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
