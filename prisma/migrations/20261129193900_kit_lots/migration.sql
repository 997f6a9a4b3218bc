-- Written by hand
-- A kit's lot is found by what was written when its sensor was fitted, as a part's is by its draw.
CREATE INDEX entries__kit_lot ON entries (shop_id, lot_key(payload ->> 'kitLot')) WHERE kind = 'sensor.fitted';
