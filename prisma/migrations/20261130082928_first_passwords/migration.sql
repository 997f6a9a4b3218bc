-- AlterTable
ALTER TABLE "sessions" ADD COLUMN     "awaits" TEXT;

-- AlterTable
ALTER TABLE "staff" ADD COLUMN     "first_password_until" TIMESTAMPTZ(3);

-- Written by hand
ALTER TABLE sessions ADD CONSTRAINT sessions__awaits_known CHECK (awaits IN ('password', 'second-step'));
ALTER TABLE staff ADD CONSTRAINT staff__first_password_there CHECK (first_password_until IS NULL OR password_hash IS NOT NULL);
