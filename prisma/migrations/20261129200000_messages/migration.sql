-- CreateTable
CREATE TABLE "messages" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "purpose" TEXT NOT NULL,
    "channel" TEXT NOT NULL,
    "caused_by" UUID NOT NULL,
    "made_by" JSON NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "reason" TEXT,
    "due_at" TIMESTAMPTZ(3) NOT NULL,
    "in_quiet_hours" BOOLEAN NOT NULL DEFAULT false,
    "next_try_at" TIMESTAMPTZ(3) NOT NULL,
    "lease_until" TIMESTAMPTZ(3),
    "tries" INTEGER NOT NULL DEFAULT 0,
    "link_id" UUID,
    "link_secret" TEXT,
    "unsubscribe" TEXT,
    "recipient" TEXT,
    "server_words" TEXT,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "messages__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateTable
CREATE TABLE "message_choices" (
    "shop_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "customer_id" UUID NOT NULL,
    "purpose" TEXT NOT NULL,
    "channel" TEXT NOT NULL,
    "allowed" BOOLEAN NOT NULL,
    "made_by" JSON NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "message_choices__pk" PRIMARY KEY ("shop_id","id")
);

-- CreateIndex
CREATE INDEX "messages__by_order" ON "messages"("shop_id", "order_id");

-- CreateIndex
CREATE UNIQUE INDEX "messages__once" ON "messages"("shop_id", "caused_by", "purpose", "channel");

-- CreateIndex
CREATE UNIQUE INDEX "messages__unsubscribe" ON "messages"("unsubscribe");

-- CreateIndex
CREATE INDEX "message_choices__by_customer" ON "message_choices"("shop_id", "customer_id", "made_at");

-- AddForeignKey
ALTER TABLE "messages" ADD CONSTRAINT "messages__order" FOREIGN KEY ("shop_id", "order_id") REFERENCES "order_heads"("shop_id", "order_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "message_choices" ADD CONSTRAINT "message_choices__customer" FOREIGN KEY ("shop_id", "customer_id") REFERENCES "customers"("shop_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Written by hand
CREATE INDEX messages__waiting ON messages (next_try_at) WHERE state = 'waiting';

ALTER TABLE messages ADD CONSTRAINT messages__purpose_known CHECK (purpose IN ('estimate', 'report', 'retorque', 'deferred'));
ALTER TABLE messages ADD CONSTRAINT messages__channel_known CHECK (channel IN ('email', 'text'));
ALTER TABLE messages ADD CONSTRAINT messages__state_known CHECK (
  state IN ('waiting', 'handed-over', 'refused', 'bounced', 'withheld', 'given-up', 'withdrawn'));
-- A secret lies here only while its message waits.
ALTER TABLE messages ADD CONSTRAINT messages__secret_gone CHECK (state = 'waiting' OR link_secret IS NULL);
ALTER TABLE messages ADD CONSTRAINT messages__ended CHECK ((state = 'waiting') = (ended_at IS NULL));

ALTER TABLE message_choices ADD CONSTRAINT message_choices__purpose_known CHECK (purpose IN ('job', 'retorque', 'deferred'));
ALTER TABLE message_choices ADD CONSTRAINT message_choices__channel_known CHECK (channel IN ('email', 'text'));
