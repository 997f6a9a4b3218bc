-- CreateTable
CREATE TABLE "received_photos" (
    "shop_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "view_digest" TEXT NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "received_photos__pk" PRIMARY KEY ("shop_id","digest")
);

-- CreateTable
CREATE TABLE "photo_pieces" (
    "shop_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "photo_pieces__pk" PRIMARY KEY ("shop_id","digest","number")
);

-- Written by hand
CREATE INDEX entries__photo ON entries (shop_id, (payload ->> 'digest')) WHERE kind = 'photo.attached';
CREATE TRIGGER received_photos__append_only BEFORE UPDATE OR DELETE ON received_photos
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER received_photos__no_truncate BEFORE TRUNCATE ON received_photos
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
ALTER TABLE received_photos
  ADD CONSTRAINT received_photos__digests_are_digests CHECK (
    length(digest) = 64 AND translate(digest, '0123456789abcdef', '') = ''
    AND length(view_digest) = 64 AND translate(view_digest, '0123456789abcdef', '') = ''
  );
ALTER TABLE photo_pieces
  ADD CONSTRAINT photo_pieces__number_counts CHECK (number >= 0),
  ADD CONSTRAINT photo_pieces__bytes_are_some CHECK (octet_length(bytes) BETWEEN 1 AND 262144);
