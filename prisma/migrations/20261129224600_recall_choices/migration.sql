-- Written by hand
-- What a customer is asked: about a recalled part too, and by telephone.
ALTER TABLE message_choices DROP CONSTRAINT message_choices__purpose_known;
ALTER TABLE message_choices ADD CONSTRAINT message_choices__purpose_known
  CHECK (purpose IN ('job', 'retorque', 'deferred', 'recall'));
ALTER TABLE message_choices DROP CONSTRAINT message_choices__channel_known;
ALTER TABLE message_choices ADD CONSTRAINT message_choices__channel_known CHECK (channel IN ('email', 'text', 'call'));
