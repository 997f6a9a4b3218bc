import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** What a message is about. */
export const MessagePurpose = z.enum(['estimate', 'report', 'retorque', 'deferred', 'new-time'])
export type MessagePurpose = z.infer<typeof MessagePurpose>

/** What a customer agrees to or not: messages of the job at hand, the torque check after it, work that was put off. */
export const ChoicePurpose = z.enum(['job', 'retorque', 'deferred'])
export type ChoicePurpose = z.infer<typeof ChoicePurpose>

export const MessageChannel = z.enum(['email', 'text'])
export type MessageChannel = z.infer<typeof MessageChannel>

/**
 * `handed-over`: the mail server took it. `refused`: it would not take it. `bounced`: it said at once that there is no such
 * mailbox. `withheld`: the service did not send it, for `reason`. `given-up`: tried for days in vain.
 */
export const MessageState = z.enum([
  'waiting',
  'handed-over',
  'refused',
  'bounced',
  'withheld',
  'given-up',
  'withdrawn',
])
export type MessageState = z.infer<typeof MessageState>

/** Why a message was not sent. */
export const WithheldReason = z.enum([
  'not-agreed',
  'no-address',
  'nothing-to-say',
  'came-back',
  'newer-message',
  'order-ended',
])
export type WithheldReason = z.infer<typeof WithheldReason>

/** A message as the desk sees it. `serverWords`: what the mail server said last. */
export const Message = z.strictObject({
  messageId: Id,
  purpose: MessagePurpose,
  channel: MessageChannel,
  state: MessageState,
  reason: z.nullable(WithheldReason),
  createdAt: Instant,
  dueAt: Instant,
  nextTryAt: z.nullable(Instant),
  tries: z.int(),
  recipient: z.nullable(z.string()),
  serverWords: z.nullable(z.string()),
  endedAt: z.nullable(Instant),
  linkId: z.nullable(Id),
})
export type Message = z.infer<typeof Message>

/** What a customer is asked beside messages: whether to be called, and to be told of a part of ours that is recalled. */
export const AskedPurpose = z.enum([...ChoicePurpose.options, 'recall'])
export type AskedPurpose = z.infer<typeof AskedPurpose>
export const AskedChannel = z.enum([...MessageChannel.options, 'call'])
export type AskedChannel = z.infer<typeof AskedChannel>

export const MessageChoice = z.strictObject({
  purpose: AskedPurpose,
  channel: AskedChannel,
  allowed: z.boolean(),
})
export type MessageChoice = z.infer<typeof MessageChoice>

/** `askedAt`: when the customer said so; `null`: nobody asked about this yet, and it is what their card says. */
export const AgreedChoice = z.strictObject({ ...MessageChoice.shape, askedAt: z.nullable(Instant) })
export type AgreedChoice = z.infer<typeof AgreedChoice>

const params = z.strictObject({ orderId: Id })

export const listMessages = endpoint({
  operationId: 'listMessages',
  summary:
    "An order's messages with what became of each, what may be sent, and which ways there are to send it.",
  method: 'GET',
  path: '/api/orders/:orderId/messages',
  access: { who: 'desk', roles: deskRoles },
  params,
  replies: {
    200: z.strictObject({
      messages: z.array(Message),
      /** Whether a mail server is set, and a folder for telephone texts. */
      carriers: z.strictObject({ email: z.boolean(), text: z.boolean() }),
      choices: z.array(MessageChoice),
      /** When a message that is sent now goes out: now, or at the end of the quiet hours. */
      goesAt: Instant,
      /** Whether the address in links opens on other machines than the server. */
      linksOpenElsewhere: z.boolean(),
    }),
  },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY'],
})

export const sendMessage = endpoint({
  operationId: 'sendMessage',
  summary:
    'Send the customer the estimate or the report with a link. The same `entryId` again sends nothing more.',
  method: 'POST',
  path: '/api/orders/:orderId/messages',
  access: { who: 'desk', roles: deskRoles },
  params,
  body: z.strictObject({
    /** Made by whoever calls: of the entry that says the estimate was sent, or of the request. */
    entryId: Id,
    purpose: z.enum(['estimate', 'report']),
    channel: MessageChannel,
    /** The customer waits for it: it goes in the quiet hours too. */
    inQuietHours: z.boolean(),
  }),
  replies: { 201: z.strictObject({ messageId: Id }) },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'ENTRY_REFUSED', 'MESSAGE_NOT_SENT'],
})

export const getNewTime = endpoint({
  operationId: 'getNewTime',
  summary: 'What to tell the customer when it will be ready later than was promised, and by which ways.',
  method: 'GET',
  path: '/api/orders/:orderId/new-time',
  access: { who: 'desk', roles: deskRoles },
  params,
  replies: {
    200: z.strictObject({
      /** `null`: the promise does not slip any more, or none was made. */
      later: z.nullable(
        z.strictObject({
          /** In the customer's language, to be read out. */
          sentence: z.string(),
          /** What is promised next. */
          promisedAt: Instant,
          /** Ways that are set up and that the customer has agreed to. */
          channels: z.array(MessageChannel),
        }),
      ),
    }),
  },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY'],
})

export const sendNewTime = endpoint({
  operationId: 'sendNewTime',
  summary:
    'Promise another time and send it to the customer, both or neither. The same `entryId` again sends nothing more.',
  method: 'POST',
  path: '/api/orders/:orderId/new-time',
  access: { who: 'desk', roles: deskRoles },
  params,
  body: z.strictObject({
    /** Of the entry that records the new promise. */
    entryId: Id,
    promisedAt: Instant,
    channel: MessageChannel,
  }),
  replies: { 201: z.strictObject({ messageId: Id }) },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'ENTRY_REFUSED', 'MESSAGE_NOT_SENT'],
})

export const withdrawMessage = endpoint({
  operationId: 'withdrawMessage',
  summary: 'Withdraw a message that still waits.',
  method: 'DELETE',
  path: '/api/orders/:orderId/messages/:messageId',
  access: { who: 'desk', roles: deskRoles },
  params: z.strictObject({ orderId: Id, messageId: Id }),
  replies: { 204: null },
  problems: ['MESSAGE_NOT_WAITING'],
})

export const listMessageChoices = endpoint({
  operationId: 'listMessageChoices',
  summary:
    'What a customer agrees to, by purpose and channel: what they said last and when, else what their card says.',
  method: 'GET',
  path: '/api/customers/:customerId/message-choices',
  access: { who: 'desk', roles: deskRoles },
  params: z.strictObject({ customerId: Id }),
  replies: { 200: z.strictObject({ choices: z.array(AgreedChoice) }) },
  problems: ['CUSTOMER_NOT_FOUND'],
})

export const putMessageChoice = endpoint({
  operationId: 'putMessageChoice',
  summary: 'Record what a customer says about being sent messages, by purpose and channel.',
  method: 'PUT',
  path: '/api/customers/:customerId/message-choices',
  access: { who: 'desk', roles: deskRoles },
  params: z.strictObject({ customerId: Id }),
  body: MessageChoice,
  replies: { 204: null },
  problems: ['CUSTOMER_NOT_FOUND'],
})

/** Also one that a mail program has cut or added a sign to: whoever opens it gets the page that says so. */
const token = z.strictObject({ token: z.string().check(z.regex(/^[\x21-\x7e]{1,200}$/)) })

export const askUnsubscribe = endpoint({
  operationId: 'askUnsubscribe',
  summary:
    'The page behind the link that ends messages. Opening it ends nothing: programs that check mail open links.',
  method: 'GET',
  path: '/api/unsubscribe/:token',
  access: { who: 'public' },
  params: token,
  replies: { 200: { contentType: 'text/html' }, 404: { contentType: 'text/html' } },
  problems: [],
})

export const unsubscribe = endpoint({
  operationId: 'unsubscribe',
  summary: 'End the messages of one purpose in one click (RFC 8058), from a mail program or from the page.',
  method: 'POST',
  path: '/api/unsubscribe/:token',
  access: { who: 'public' },
  fromAnywhere: true,
  params: token,
  triesPerMinute: 60,
  replies: { 200: { contentType: 'text/html' }, 404: { contentType: 'text/html' } },
  problems: [],
})
