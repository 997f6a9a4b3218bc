-- AlterTable
ALTER TABLE "customers" ADD COLUMN     "erased_at" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "erasures" ADD COLUMN     "counts" JSON,
ADD COLUMN     "customer_id" UUID,
ADD COLUMN     "identity" TEXT;

-- CreateTable
CREATE TABLE "legal_holds" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "subject" TEXT NOT NULL,
    "subject_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "placed_by" UUID NOT NULL,
    "placed_at" TIMESTAMPTZ(3) NOT NULL,
    "lifted_by" UUID,
    "lifted_at" TIMESTAMPTZ(3),

    CONSTRAINT "legal_holds__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateIndex
CREATE INDEX "legal_holds__by_subject" ON "legal_holds"("shop_id", "subject_id");

-- CreateIndex
CREATE INDEX "legal_holds__by_placer" ON "legal_holds"("shop_id", "placed_by");

-- CreateIndex
CREATE INDEX "legal_holds__by_lifter" ON "legal_holds"("shop_id", "lifted_by");

-- CreateIndex
CREATE INDEX "erasures__by_customer" ON "erasures"("shop_id", "customer_id");

-- AddForeignKey
ALTER TABLE "legal_holds" ADD CONSTRAINT "legal_holds__placed_by" FOREIGN KEY ("shop_id", "placed_by") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "legal_holds" ADD CONSTRAINT "legal_holds__lifted_by" FOREIGN KEY ("shop_id", "lifted_by") REFERENCES "staff"("shop_id", "id") ON DELETE RESTRICT ON UPDATE NO ACTION;

-- Written by hand
ALTER TABLE legal_holds
  ADD CONSTRAINT legal_holds__subject_known CHECK (subject IN ('customer', 'order')),
  ADD CONSTRAINT legal_holds__reason_given CHECK (reason <> ''),
  ADD CONSTRAINT legal_holds__lifted CHECK ((lifted_at IS NULL) = (lifted_by IS NULL));
CREATE UNIQUE INDEX legal_holds__once ON legal_holds (shop_id, subject, subject_id) WHERE lifted_at IS NULL;

-- A person's cards and all that hangs on them. Of a card that was erased before, only orders from until then: it may have been
-- taken for somebody else since. Marks are what a draft or a kept reply says of the person in words.
CREATE TYPE person_rows AS (customers UUID[], vehicles UUID[], orders UUID[], photos TEXT[], marks TEXT[]);
CREATE FUNCTION rows_of_person(p_shop UUID, p_customer UUID) RETURNS person_rows LANGUAGE plpgsql STABLE AS $$
DECLARE
  found person_rows;
  until TIMESTAMPTZ;
BEGIN
  SELECT erased_at INTO until FROM customers WHERE shop_id = p_shop AND id = p_customer;
  found.customers := ARRAY(SELECT c.id FROM same_customer(p_shop, p_customer) AS same (id)
    JOIN customers AS c ON c.shop_id = p_shop AND c.id = same.id WHERE until IS NULL OR c.erased_at IS NOT NULL);
  found.vehicles := ARRAY(SELECT id FROM vehicles
    WHERE shop_id = p_shop AND customer_id = ANY (found.customers) AND until IS NULL);
  found.orders := ARRAY(SELECT order_id FROM order_heads
    WHERE shop_id = p_shop AND customer_id = ANY (found.customers) AND (until IS NULL OR opened_at <= until));
  -- A photo that an order of somebody else shows too is theirs as well.
  found.photos := ARRAY(SELECT DISTINCT payload ->> 'digest' FROM entries AS e
    WHERE shop_id = p_shop AND order_id = ANY (found.orders) AND kind = 'photo.attached' AND NOT EXISTS (
      SELECT FROM entries AS o WHERE o.shop_id = p_shop AND o.kind = 'photo.attached'
        AND o.payload ->> 'digest' = e.payload ->> 'digest' AND o.order_id <> ALL (found.orders)));
  found.marks := ARRAY(
    SELECT id::text FROM unnest(found.customers || found.vehicles || found.orders) AS id
    UNION SELECT mark FROM customers AS c, unnest(ARRAY[to_json(c.name)::text, c.phone, c.email]) AS mark
      WHERE shop_id = p_shop AND id = ANY (found.customers) AND until IS NULL AND mark IS NOT NULL
    UNION SELECT mark FROM vehicles AS v, unnest(ARRAY[to_json(v.plate)::text, v.vin]) AS mark
      WHERE shop_id = p_shop AND id = ANY (found.vehicles) AND mark IS NOT NULL);
  RETURN found;
END
$$;
CREATE FUNCTION names_person(kept JSON, marks TEXT[]) RETURNS BOOLEAN LANGUAGE sql STABLE AS $$
  SELECT EXISTS (SELECT FROM unnest(marks) AS mark WHERE strpos(lower(kept::text), lower(mark)) > 0)
$$;

-- How many of each kind of thing an erasure would take, beside what erase_person says it took.
CREATE FUNCTION count_person(p_shop UUID, p_customer UUID, p_reports TEXT[]) RETURNS JSON LANGUAGE plpgsql STABLE AS $$
DECLARE
  own person_rows := rows_of_person(p_shop, p_customer);
BEGIN
  RETURN json_build_object(
    'cards', (SELECT count(*) FROM customers WHERE shop_id = p_shop AND id = ANY (own.customers) AND erased_at IS NULL),
    'vehicles', cardinality(own.vehicles),
    'words', (SELECT count(*) FROM personal_texts WHERE shop_id = p_shop AND order_id = ANY (own.orders)),
    'contacts', (SELECT count(*) FROM contact_sides WHERE shop_id = p_shop AND order_id = ANY (own.orders)),
    'shown', (SELECT count(*) FROM shown_sides WHERE shop_id = p_shop AND order_id = ANY (own.orders)),
    'photos', (SELECT count(*) FROM blobs WHERE shop_id = p_shop AND sha256 = ANY (own.photos)),
    'reports', (SELECT count(DISTINCT b.sha256) FROM sealed_reports AS r JOIN blobs AS b ON b.shop_id = r.shop_id AND b.sha256 = r.sha256
      WHERE r.shop_id = p_shop AND r.order_id = ANY (own.orders) AND r.sha256 = ANY (p_reports)),
    'messages', (SELECT count(*) FROM messages WHERE shop_id = p_shop AND order_id = ANY (own.orders)
      AND (recipient IS NOT NULL OR unsubscribe IS NOT NULL OR server_words IS NOT NULL OR state = 'waiting')),
    'choices', (SELECT count(*) FROM message_choices WHERE shop_id = p_shop AND customer_id = ANY (own.customers)),
    'openings', (SELECT count(*) FROM link_openings AS o JOIN customer_links AS l ON l.shop_id = o.shop_id AND l.id = o.link_id
      WHERE l.shop_id = p_shop AND l.order_id = ANY (own.orders)),
    'drafts', (SELECT count(*) FROM write_up_drafts WHERE shop_id = p_shop AND names_person(body, own.marks)),
    'refused', (SELECT count(*) FROM refused_entries WHERE shop_id = p_shop AND order_id = ANY (own.orders)));
END
$$;

-- Erases a person in the transaction that calls it, with its owner's rights: the service itself may delete nothing of this. It takes
-- what hangs on one customer and nothing else, leaves the row that says so, and refuses while a hold or an open order is there
-- (SQLSTATE BL001, BL002). What is gone already stays gone: called again it takes what came late, and writes a row only then.
CREATE FUNCTION erase_person(p_shop UUID, p_erasure UUID, p_customer UUID, p_reports TEXT[], p_reason TEXT, p_identity TEXT,
  p_by JSON, p_at TIMESTAMPTZ) RETURNS JSON LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE
  own person_rows;
  taken JSON;
  views TEXT[];
  files TEXT[];
  gone TEXT[];
  links UUID[];
BEGIN
  PERFORM FROM customers WHERE shop_id = p_shop AND id IN (SELECT same_customer(p_shop, p_customer)) ORDER BY id FOR UPDATE;
  PERFORM FROM order_heads WHERE shop_id = p_shop AND customer_id IN (SELECT same_customer(p_shop, p_customer))
    ORDER BY order_id FOR UPDATE;
  own := rows_of_person(p_shop, p_customer);
  IF EXISTS (SELECT FROM legal_holds WHERE shop_id = p_shop AND lifted_at IS NULL
      AND subject_id = ANY (own.customers || own.orders)) THEN
    RAISE EXCEPTION 'a legal hold keeps this' USING ERRCODE = 'BL001';
  END IF;
  IF EXISTS (SELECT FROM order_heads WHERE shop_id = p_shop AND order_id = ANY (own.orders) AND is_open) THEN
    RAISE EXCEPTION 'an order is open' USING ERRCODE = 'BL002';
  END IF;
  taken := count_person(p_shop, p_customer, p_reports);
  views := ARRAY(SELECT view_digest FROM received_photos WHERE shop_id = p_shop AND digest = ANY (own.photos)
    EXCEPT SELECT view_digest FROM received_photos WHERE shop_id = p_shop AND digest <> ALL (own.photos));
  files := ARRAY(SELECT sha256 FROM sealed_reports WHERE shop_id = p_shop AND order_id = ANY (own.orders) AND sha256 = ANY (p_reports));
  links := ARRAY(SELECT id FROM customer_links WHERE shop_id = p_shop AND order_id = ANY (own.orders));
  gone := ARRAY(
    SELECT digest FROM personal_texts WHERE shop_id = p_shop AND order_id = ANY (own.orders)
    UNION SELECT digest FROM contact_sides WHERE shop_id = p_shop AND order_id = ANY (own.orders)
    UNION SELECT digest FROM shown_sides WHERE shop_id = p_shop AND order_id = ANY (own.orders)
    UNION SELECT unnest(own.photos || views || files)
    EXCEPT SELECT unnest(digests) FROM erasures WHERE shop_id = p_shop AND customer_id = ANY (own.customers));

  DELETE FROM personal_texts WHERE shop_id = p_shop AND order_id = ANY (own.orders);
  DELETE FROM contact_sides WHERE shop_id = p_shop AND order_id = ANY (own.orders);
  DELETE FROM shown_sides WHERE shop_id = p_shop AND order_id = ANY (own.orders);
  DELETE FROM blobs WHERE shop_id = p_shop AND sha256 = ANY (own.photos || views || files);
  DELETE FROM photo_pieces WHERE shop_id = p_shop AND digest = ANY (own.photos);
  DELETE FROM refused_entries WHERE shop_id = p_shop AND order_id = ANY (own.orders);
  DELETE FROM link_sessions WHERE shop_id = p_shop AND link_id = ANY (links);
  DELETE FROM link_openings WHERE shop_id = p_shop AND link_id = ANY (links);
  UPDATE customer_links SET revoked_at = p_at WHERE shop_id = p_shop AND id = ANY (links) AND revoked_at IS NULL;
  UPDATE messages SET recipient = NULL, unsubscribe = NULL, server_words = NULL, link_secret = NULL, lease_until = NULL,
      state = CASE state WHEN 'waiting' THEN 'withdrawn' ELSE state END, ended_at = coalesce(ended_at, p_at)
    WHERE shop_id = p_shop AND order_id = ANY (own.orders);
  DELETE FROM message_choices WHERE shop_id = p_shop AND customer_id = ANY (own.customers);
  DELETE FROM write_up_drafts WHERE shop_id = p_shop AND names_person(body, own.marks);
  DELETE FROM idempotency_keys WHERE shop_id = p_shop AND names_person(reply, own.marks);
  UPDATE record_merges SET before = '{}', after = '{}'
    WHERE shop_id = p_shop AND (merged_id = ANY (own.customers || own.vehicles) OR survivor_id = ANY (own.customers || own.vehicles));
  UPDATE legal_holds SET reason = 'erased' WHERE shop_id = p_shop AND subject_id = ANY (own.customers || own.orders);
  UPDATE vehicles SET plate = NULL, plate_region = NULL, vin = NULL, color = NULL, notes = NULL, version = version + 1, updated_at = p_at
    WHERE shop_id = p_shop AND id = ANY (own.vehicles);
  UPDATE customers SET name = 'Erased person', phone = NULL, email = NULL, may_text = false, may_email = false, may_call = false,
      language = 'en', version = version + 1, updated_at = p_at, erased_at = p_at
    WHERE shop_id = p_shop AND id = ANY (own.customers) AND erased_at IS NULL;
  DELETE FROM search_tokens WHERE shop_id = p_shop AND kind IN ('name', 'phone') AND subject_id = ANY (own.customers);

  IF cardinality(gone) > 0 OR EXISTS (SELECT FROM json_each_text(taken) WHERE value <> '0') THEN
    INSERT INTO erasures (shop_id, id, order_id, subject, digests, reason, erased_by, erased_at, customer_id, identity, counts)
      VALUES (p_shop, p_erasure, NULL, 'person', gone, p_reason, p_by, p_at, p_customer, p_identity, taken);
  END IF;
  RETURN taken;
END
$$;
