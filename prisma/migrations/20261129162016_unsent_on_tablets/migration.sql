-- AlterTable
ALTER TABLE "devices" ADD COLUMN     "unsent_entries" INTEGER,
ADD COLUMN     "unsent_photos" INTEGER,
ADD COLUMN     "unsent_told_at" TIMESTAMPTZ(3);

-- Written by hand
ALTER TABLE devices ADD CONSTRAINT devices__unsent_told CHECK (
  (unsent_told_at IS NULL) = (unsent_entries IS NULL) AND (unsent_told_at IS NULL) = (unsent_photos IS NULL)
  AND (unsent_entries IS NULL OR unsent_entries >= 0) AND (unsent_photos IS NULL OR unsent_photos >= 0));
