-- AlterTable
-- Written by hand: whoever is signed in proved it when they signed in.
ALTER TABLE "sessions" ADD COLUMN     "proven_at" TIMESTAMPTZ(3);
UPDATE "sessions" SET "proven_at" = "created_at";
ALTER TABLE "sessions" ALTER COLUMN "proven_at" SET NOT NULL;
