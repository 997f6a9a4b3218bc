-- DropIndex
DROP INDEX "customers__search";

-- DropIndex
DROP INDEX "seen_sensors__search";

-- DropIndex
DROP INDEX "vehicles__search";

-- AlterTable
ALTER TABLE "customers" DROP COLUMN "search_text";

-- AlterTable
ALTER TABLE "vehicles" DROP COLUMN "search_text";

-- CreateTable
CREATE TABLE "search_tokens" (
    "shop_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "subject_id" UUID NOT NULL,

    CONSTRAINT "search_tokens__pk" PRIMARY KEY ("shop_id","kind","token","subject_id")
);


-- Written by hand
-- Each thing that can be typed is found by its beginning, in one b-tree, whatever was typed and however many there are.
-- What is usually read from its end (a VIN, a telephone number, a sensor ID) is kept backward as well. Byte order, so that a
-- beginning is a range.
ALTER TABLE search_tokens
  ALTER COLUMN token TYPE TEXT COLLATE "C",
  ADD CONSTRAINT search_tokens__token_given CHECK (token <> ''),
  ADD CONSTRAINT search_tokens__kind_known
    CHECK (kind IN ('order-number', 'plate', 'vin', 'phone', 'name', 'model', 'sensor-id', 'tin'));

-- Letters without their accents in small type, words with one blank between: "Müller-Søe" and "muller soe" are the same.
CREATE FUNCTION search_fold(typed TEXT) RETURNS TEXT LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT trim(regexp_replace(regexp_replace(
    replace(replace(replace(replace(translate(lower(regexp_replace(normalize(typed, NFD), '[\u0300-\u036f]', '', 'g')),
      'ØøŁłĐđı', 'oollddi'), 'ß', 'ss'), 'æ', 'ae'), 'Æ', 'ae'), 'œ', 'oe'),
    '[''’ʼ`´.]', '', 'g'), '[\s!-/:-@[-`{-~]+', ' ', 'g'))
$$;
-- Capital letters and digits alone, O as 0 and I as 1.
CREATE FUNCTION search_mark(typed TEXT) RETURNS TEXT LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT translate(regexp_replace(upper(typed), '[^A-Z0-9]', '', 'g'), 'OI', '01')
$$;
-- A text from each of its words on; "around": with the words before it at the end, so that names are found in any order.
CREATE FUNCTION search_from_words(folded TEXT, around BOOLEAN) RETURNS SETOF TEXT LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT DISTINCT concat_ws(' ', array_to_string(words[place:], ' '),
    CASE WHEN around AND place > 1 THEN array_to_string(words[:place - 1], ' ') END)
  FROM (SELECT string_to_array(folded, ' ') AS words) AS text, generate_subscripts(words, 1) AS place
  WHERE folded <> '' AND place <= 8
$$;

CREATE FUNCTION search_of_customer(name TEXT, phone TEXT) RETURNS TABLE (kind TEXT, token TEXT)
LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT 'name', search_from_words(left(search_fold(name), 200), true)
  UNION
  SELECT 'phone', way FROM (SELECT regexp_replace(phone, '[^0-9]', '', 'g') AS digits) AS typed,
    unnest(ARRAY[regexp_replace(digits, '^1(?=\d{10}$)', ''), reverse(digits)]) AS way
  WHERE digits <> ''
$$;
CREATE FUNCTION search_of_vehicle(plate TEXT, vin TEXT, description TEXT) RETURNS TABLE (kind TEXT, token TEXT)
LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT 'plate', substr(mark, place) FROM (SELECT search_mark(plate) AS mark) AS typed,
    generate_series(1, greatest(length(mark) - 1, 1)) AS place
  WHERE mark <> ''
  UNION
  SELECT 'vin', way FROM unnest(ARRAY[vin, reverse(vin)]) AS way WHERE vin IS NOT NULL
  UNION
  SELECT 'model', search_from_words(left(search_fold(description), 200), false)
$$;

-- Once a statement, with the definer's rights: whoever writes a customer need not be able to change what is looked up.
CREATE FUNCTION keep_customer_search() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF TG_OP <> 'INSERT' THEN
    DELETE FROM search_tokens AS kept USING old_rows AS c, search_of_customer(c.name, c.phone) AS made
      WHERE kept.shop_id = c.shop_id AND kept.kind = made.kind AND kept.token = made.token AND kept.subject_id = c.id;
  END IF;
  IF TG_OP <> 'DELETE' THEN
    INSERT INTO search_tokens (shop_id, kind, token, subject_id)
      SELECT c.shop_id, made.kind, made.token, c.id FROM new_rows AS c, search_of_customer(c.name, c.phone) AS made;
  END IF;
  RETURN NULL;
END
$$;
CREATE FUNCTION keep_vehicle_search() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF TG_OP <> 'INSERT' THEN
    DELETE FROM search_tokens AS kept USING old_rows AS v, search_of_vehicle(v.plate, v.vin, v.description) AS made
      WHERE kept.shop_id = v.shop_id AND kept.kind = made.kind AND kept.token = made.token AND kept.subject_id = v.id;
  END IF;
  IF TG_OP <> 'DELETE' THEN
    INSERT INTO search_tokens (shop_id, kind, token, subject_id)
      SELECT v.shop_id, made.kind, made.token, v.id FROM new_rows AS v, search_of_vehicle(v.plate, v.vin, v.description) AS made;
  END IF;
  RETURN NULL;
END
$$;

CREATE TRIGGER customers__search_of_new AFTER INSERT ON customers REFERENCING NEW TABLE AS new_rows
  FOR EACH STATEMENT EXECUTE FUNCTION keep_customer_search();
CREATE TRIGGER customers__search_of_changed AFTER UPDATE ON customers
  REFERENCING OLD TABLE AS old_rows NEW TABLE AS new_rows FOR EACH STATEMENT EXECUTE FUNCTION keep_customer_search();
CREATE TRIGGER customers__search_of_gone AFTER DELETE ON customers REFERENCING OLD TABLE AS old_rows
  FOR EACH STATEMENT EXECUTE FUNCTION keep_customer_search();
CREATE TRIGGER vehicles__search_of_new AFTER INSERT ON vehicles REFERENCING NEW TABLE AS new_rows
  FOR EACH STATEMENT EXECUTE FUNCTION keep_vehicle_search();
CREATE TRIGGER vehicles__search_of_changed AFTER UPDATE ON vehicles
  REFERENCING OLD TABLE AS old_rows NEW TABLE AS new_rows FOR EACH STATEMENT EXECUTE FUNCTION keep_vehicle_search();
CREATE TRIGGER vehicles__search_of_gone AFTER DELETE ON vehicles REFERENCING OLD TABLE AS old_rows
  FOR EACH STATEMENT EXECUTE FUNCTION keep_vehicle_search();

-- What entries say. An order keeps its number, and a sensor or a tire that was once seen on a vehicle is found there.
CREATE FUNCTION search_of_order(number TEXT) RETURNS TABLE (kind TEXT, token TEXT)
LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT DISTINCT 'order-number', way FROM (SELECT regexp_replace(upper(number), '[^A-Z0-9]', '', 'g') AS plain) AS typed,
    unnest(ARRAY[plain, regexp_replace(plain, '^[A-Z]*0*', '')]) AS way WHERE way <> ''
$$;
CREATE FUNCTION search_of_sensor(sensor_id TEXT) RETURNS TABLE (kind TEXT, token TEXT)
LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT DISTINCT 'sensor-id', way FROM unnest(ARRAY[sensor_id, reverse(sensor_id)]) AS way WHERE sensor_id <> ''
$$;
-- A date code alone, four digits, is on thousands of tires and finds none.
CREATE FUNCTION search_of_tire(typed TEXT) RETURNS TABLE (kind TEXT, token TEXT)
LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT DISTINCT 'tin', way
  FROM (SELECT search_mark(regexp_replace(upper(typed), '^\s*DOT', '')) AS mark) AS seen,
    unnest(ARRAY[mark, reverse(mark)]) AS way WHERE length(mark) > 4
$$;
CREATE FUNCTION keep_order_search() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  INSERT INTO search_tokens (shop_id, kind, token, subject_id)
    SELECT NEW.shop_id, made.kind, made.token, NEW.order_id FROM search_of_order(NEW.number) AS made
    ON CONFLICT DO NOTHING;
  RETURN NULL;
END
$$;
CREATE TRIGGER order_heads__search AFTER INSERT ON order_heads FOR EACH ROW EXECUTE FUNCTION keep_order_search();
CREATE FUNCTION keep_sensor_search() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  INSERT INTO search_tokens (shop_id, kind, token, subject_id)
    SELECT NEW.shop_id, made.kind, made.token, NEW.vehicle_id FROM search_of_sensor(NEW.sensor_id) AS made
    ON CONFLICT DO NOTHING;
  RETURN NULL;
END
$$;
CREATE TRIGGER seen_sensors__search AFTER INSERT ON seen_sensors FOR EACH ROW EXECUTE FUNCTION keep_sensor_search();
CREATE FUNCTION keep_tire_search() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  INSERT INTO search_tokens (shop_id, kind, token, subject_id)
    SELECT h.shop_id, made.kind, made.token, h.vehicle_id
    FROM order_heads AS h, search_of_tire(NEW.payload -> 'dateCodeSeen' ->> 'text') AS made
    WHERE h.shop_id = NEW.shop_id AND h.order_id = NEW.order_id
    ON CONFLICT DO NOTHING;
  RETURN NULL;
END
$$;
CREATE TRIGGER entries__tire_search AFTER INSERT ON entries FOR EACH ROW WHEN (NEW.kind = 'tire.inspected')
  EXECUTE FUNCTION keep_tire_search();

-- What there is already
INSERT INTO search_tokens SELECT c.shop_id, made.kind, made.token, c.id
  FROM customers AS c, search_of_customer(c.name, c.phone) AS made;
INSERT INTO search_tokens SELECT v.shop_id, made.kind, made.token, v.id
  FROM vehicles AS v, search_of_vehicle(v.plate, v.vin, v.description) AS made;
INSERT INTO search_tokens SELECT h.shop_id, made.kind, made.token, h.order_id
  FROM order_heads AS h, search_of_order(h.number) AS made;
INSERT INTO search_tokens SELECT s.shop_id, made.kind, made.token, s.vehicle_id
  FROM seen_sensors AS s, search_of_sensor(s.sensor_id) AS made ON CONFLICT DO NOTHING;
INSERT INTO search_tokens SELECT h.shop_id, made.kind, made.token, h.vehicle_id
  FROM entries AS e JOIN order_heads AS h USING (shop_id, order_id),
    search_of_tire(e.payload -> 'dateCodeSeen' ->> 'text') AS made
  WHERE e.kind = 'tire.inspected' ON CONFLICT DO NOTHING;

-- The first way of searching
DROP TRIGGER customers__fill_search ON customers;
DROP FUNCTION fill_customer_search();
CREATE OR REPLACE FUNCTION fill_vehicle_search() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.plate_normalized := search_mark(coalesce(NEW.plate, ''));
  RETURN NEW;
END
$$;
