-- Written by hand
-- A service kit leaves its shelf by the entry that fitted it. Kits that were fitted before get their movements now; what was
-- on hand stays as it was last counted.
WITH fitted AS (
  SELECT e.shop_id, e.id AS entry_id, h.location_id, e.payload ->> 'kitPart' AS part_number, -1 AS quantity
  FROM entries e JOIN order_heads h ON h.shop_id = e.shop_id AND h.order_id = e.order_id
  WHERE e.kind = 'sensor.fitted'
  UNION ALL
  SELECT x.shop_id, x.id, h.location_id, e.payload ->> 'kitPart', 1
  FROM entries x
  JOIN entries e ON e.shop_id = x.shop_id AND e.order_id = x.order_id AND e.id::text = x.payload ->> 'entryId'
  JOIN order_heads h ON h.shop_id = x.shop_id AND h.order_id = x.order_id
  WHERE x.kind = 'entry.struck' AND e.kind = 'sensor.fitted'
), moved AS (
  INSERT INTO stock_movements (shop_id, entry_id, line, stock_item_id, quantity, kind)
  SELECT f.shop_id, f.entry_id, 0, s.id, f.quantity, CASE WHEN f.quantity < 0 THEN 'drawn' ELSE 'withdrawn' END
  FROM fitted f
  JOIN stock_items s ON s.shop_id = f.shop_id AND s.location_id = f.location_id AND s.part_number = f.part_number
  RETURNING shop_id, stock_item_id, quantity
)
INSERT INTO stock_changes (shop_id, id, stock_item_id, kind, quantity, written_by, written_at)
SELECT shop_id, gen_random_uuid(), stock_item_id, 'opened', -sum(quantity)::int, '{"kind":"system"}', now()
FROM moved GROUP BY shop_id, stock_item_id HAVING sum(quantity) <> 0;
