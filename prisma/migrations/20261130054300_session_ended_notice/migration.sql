-- Written by hand
-- A session that ended is named to every process at the commit that ends it, whoever ended it, so that its live stream ends too.
CREATE FUNCTION say_session_ended() RETURNS trigger LANGUAGE plpgsql SET search_path = public AS $$
BEGIN
  PERFORM pg_notify('bayledger_session_ended', NEW.id::text);
  RETURN NULL;
END
$$;
CREATE TRIGGER sessions__say_ended AFTER UPDATE OF ended_at ON sessions
  FOR EACH ROW WHEN (OLD.ended_at IS NULL AND NEW.ended_at IS NOT NULL) EXECUTE FUNCTION say_session_ended();
