-- AlterTable
ALTER TABLE "order_heads" ADD COLUMN     "figures" JSON,
ADD COLUMN     "left_to_do" JSON;

-- Written by hand
-- A customer is told of a new time by message too.
ALTER TABLE messages
  DROP CONSTRAINT messages__purpose_known,
  ADD CONSTRAINT messages__purpose_known
    CHECK (purpose IN ('estimate', 'report', 'retorque', 'deferred', 'new-time'));
