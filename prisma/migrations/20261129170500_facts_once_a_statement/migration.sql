-- Written by hand
-- Once a statement, not once a row: an import of 10,000 rows wrote the shop's row 10,000 times. What appends change (clicks
-- of a wrench, stock on hand) still does not raise it. The definer's rights: who changes a person need not own the shop.
DROP TRIGGER staff__raise_facts ON staff;
DROP TRIGGER instruments__raise_facts ON instruments;
DROP TRIGGER stock_items__raise_facts ON stock_items;
DROP TRIGGER locations__raise_facts ON locations;

CREATE FUNCTION raise_facts_of_changed() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  UPDATE shops SET facts_version = facts_version + 1 WHERE id IN (SELECT shop_id FROM changed);
  RETURN NULL;
END
$$;

-- The columns that count are the trigger's arguments. As text, because JSON cannot be compared.
CREATE FUNCTION raise_facts_of_updated() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE
  counted text := (SELECT string_agg(format('%I::text', name), ', ') FROM unnest(TG_ARGV) AS name);
BEGIN
  EXECUTE format(
    'UPDATE shops SET facts_version = facts_version + 1 WHERE id IN (
       (SELECT shop_id FROM (SELECT shop_id, %1$s FROM old_rows EXCEPT SELECT shop_id, %1$s FROM new_rows) AS gone)
       UNION
       (SELECT shop_id FROM (SELECT shop_id, %1$s FROM new_rows EXCEPT SELECT shop_id, %1$s FROM old_rows) AS come))',
    counted);
  RETURN NULL;
END
$$;

CREATE TRIGGER staff__raise_facts_of_new AFTER INSERT ON staff REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER staff__raise_facts_of_gone AFTER DELETE ON staff REFERENCING OLD TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER staff__raise_facts AFTER UPDATE ON staff REFERENCING OLD TABLE AS old_rows NEW TABLE AS new_rows
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_updated('id', 'roles', 'active');

CREATE TRIGGER instruments__raise_facts_of_new AFTER INSERT ON instruments REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER instruments__raise_facts_of_gone AFTER DELETE ON instruments REFERENCING OLD TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER instruments__raise_facts AFTER UPDATE ON instruments
  REFERENCING OLD TABLE AS old_rows NEW TABLE AS new_rows
  FOR EACH STATEMENT
  EXECUTE FUNCTION raise_facts_of_updated('id', 'location_id', 'kind', 'body', 'due_on', 'quarantined');

CREATE TRIGGER stock_items__raise_facts_of_new AFTER INSERT ON stock_items REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER stock_items__raise_facts_of_gone AFTER DELETE ON stock_items REFERENCING OLD TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER stock_items__raise_facts AFTER UPDATE ON stock_items
  REFERENCING OLD TABLE AS old_rows NEW TABLE AS new_rows
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_updated('id', 'location_id', 'part_number', 'family');

CREATE TRIGGER locations__raise_facts_of_new AFTER INSERT ON locations REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER locations__raise_facts_of_gone AFTER DELETE ON locations REFERENCING OLD TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_changed();
CREATE TRIGGER locations__raise_facts AFTER UPDATE ON locations
  REFERENCING OLD TABLE AS old_rows NEW TABLE AS new_rows
  FOR EACH STATEMENT EXECUTE FUNCTION raise_facts_of_updated('id', 'law_profile');
