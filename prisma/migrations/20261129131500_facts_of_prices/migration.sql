-- Written by hand
-- How much each role may take off is decided with the newest prices: whoever appends must hear of them at once.
CREATE TRIGGER setting_versions__raise_facts AFTER INSERT ON setting_versions
  FOR EACH ROW WHEN (NEW.kind = 'prices') EXECUTE FUNCTION raise_facts_version();
