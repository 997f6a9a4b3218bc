-- CreateTable
CREATE TABLE "report_stamps" (
    "shop_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "token" BYTEA,
    "noted_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "report_stamps__pk" PRIMARY KEY ("shop_id","number")
);

-- AddForeignKey
ALTER TABLE "report_stamps" ADD CONSTRAINT "report_stamps__report" FOREIGN KEY ("shop_id", "number") REFERENCES "sealed_reports"("shop_id", "number") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
ALTER TABLE report_stamps ADD CONSTRAINT report_stamps__is_short CHECK (octet_length(token) BETWEEN 1 AND 16384);
CREATE TRIGGER report_stamps__append_only BEFORE UPDATE OR DELETE ON report_stamps
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
