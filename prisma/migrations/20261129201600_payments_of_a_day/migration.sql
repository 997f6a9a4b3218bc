-- Written by hand
-- What was paid on a day is found without reading the rest of the ledger.
CREATE INDEX entries__payments ON entries (shop_id, received_at) WHERE kind IN ('payment.noted', 'payment.corrected');
