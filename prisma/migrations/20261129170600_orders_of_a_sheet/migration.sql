-- Written by hand
-- The orders that used a sheet are found by what they wrote, whether or not their vehicle is linked to it.
CREATE INDEX entries__sheet ON entries (shop_id, ((payload -> 'sheet') ->> 'sheetId')) WHERE kind = 'sheet.chosen';
