-- Written by hand
-- Whether a legal hold is on an order or on its customer, under any record of theirs.
CREATE FUNCTION is_held(p_shop UUID, p_order UUID) RETURNS BOOLEAN LANGUAGE sql STABLE AS $$
  SELECT EXISTS (SELECT FROM order_heads AS h, legal_holds AS l WHERE h.shop_id = p_shop AND h.order_id = p_order
    AND l.shop_id = p_shop AND l.lifted_at IS NULL
    AND (l.subject_id = h.order_id OR l.subject_id IN (SELECT same_customer(p_shop, h.customer_id))))
$$;

-- How many things of a shop are older than its times say, without what a hold keeps.
CREATE FUNCTION count_past(p_shop UUID, p_at TIMESTAMPTZ, p_days JSON) RETURNS JSON LANGUAGE sql STABLE AS $$
  SELECT json_build_object(
    'drafts', (SELECT count(*) FROM write_up_drafts WHERE shop_id = p_shop AND updated_at < p_at - make_interval(days => (p_days ->> 'draftDays')::int)),
    'messages', (SELECT count(*) FROM messages WHERE shop_id = p_shop AND (recipient IS NOT NULL OR server_words IS NOT NULL)
      AND ended_at < p_at - make_interval(days => (p_days ->> 'messageDays')::int) AND NOT is_held(p_shop, order_id)),
    'openings', (SELECT count(*) FROM link_openings AS o JOIN customer_links AS l ON l.shop_id = o.shop_id AND l.id = o.link_id
      WHERE o.shop_id = p_shop AND o.opened_at < p_at - make_interval(days => (p_days ->> 'openingDays')::int) AND NOT is_held(p_shop, l.order_id)),
    'browsers', (SELECT count(*) FROM known_browsers WHERE shop_id = p_shop
      AND last_used_at < p_at - make_interval(days => (p_days ->> 'browserDays')::int)),
    'sessions', (SELECT count(*) FROM sessions WHERE shop_id = p_shop AND (address IS NOT NULL OR browser IS NOT NULL)
      AND least(ended_at, expires_at) < p_at - make_interval(days => (p_days ->> 'browserDays')::int)),
    'refused', (SELECT count(*) FROM refused_entries WHERE shop_id = p_shop
      AND settled_at < p_at - make_interval(days => (p_days ->> 'refusedDays')::int) AND NOT is_held(p_shop, order_id)))
$$;

-- Forgets them, with its owner's rights; by the database's own clock at the latest, so that a program that says another time forgets
-- nothing sooner.
CREATE FUNCTION forget_past(p_shop UUID, p_at TIMESTAMPTZ, p_days JSON) RETURNS JSON
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE
  until TIMESTAMPTZ := least(p_at, now());
  taken JSON := count_past(p_shop, until, p_days);
BEGIN
  DELETE FROM write_up_drafts WHERE shop_id = p_shop AND updated_at < until - make_interval(days => (p_days ->> 'draftDays')::int);
  UPDATE messages SET recipient = NULL, server_words = NULL WHERE shop_id = p_shop AND (recipient IS NOT NULL OR server_words IS NOT NULL)
    AND ended_at < until - make_interval(days => (p_days ->> 'messageDays')::int) AND NOT is_held(p_shop, order_id);
  DELETE FROM link_openings AS o USING customer_links AS l WHERE l.shop_id = o.shop_id AND l.id = o.link_id
    AND o.shop_id = p_shop AND o.opened_at < until - make_interval(days => (p_days ->> 'openingDays')::int) AND NOT is_held(p_shop, l.order_id);
  DELETE FROM known_browsers WHERE shop_id = p_shop AND last_used_at < until - make_interval(days => (p_days ->> 'browserDays')::int);
  UPDATE sessions SET address = NULL, browser = NULL WHERE shop_id = p_shop AND (address IS NOT NULL OR browser IS NOT NULL)
    AND least(ended_at, expires_at) < until - make_interval(days => (p_days ->> 'browserDays')::int);
  DELETE FROM refused_entries WHERE shop_id = p_shop
    AND settled_at < until - make_interval(days => (p_days ->> 'refusedDays')::int) AND NOT is_held(p_shop, order_id);
  RETURN taken;
END
$$;
