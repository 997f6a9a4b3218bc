-- A refusal is kept as a code and the values that its words are made from; the words are made when somebody reads it.
-- No row exists yet: a shop's first writes come after this.
ALTER TABLE "refused_entries" DROP COLUMN "words",
ADD COLUMN     "values" JSON NOT NULL;

ALTER TABLE refused_entries ADD CONSTRAINT refused_entries__reason_given CHECK (code <> '');
