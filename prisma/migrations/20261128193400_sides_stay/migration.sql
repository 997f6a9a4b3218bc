-- An erasure deletes single sides; nothing empties a table of them at one stroke.
CREATE TRIGGER contact_sides__no_truncate BEFORE TRUNCATE ON contact_sides
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER money_sides__no_truncate BEFORE TRUNCATE ON money_sides
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER shown_sides__no_truncate BEFORE TRUNCATE ON shown_sides
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
