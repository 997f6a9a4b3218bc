/** What a message to a customer is about. */
export type MessageAbout = 'estimate' | 'report' | 'retorque' | 'deferred'

/** What a customer stops at once: messages of the job, the reminder of the torque check, reminders of work put off. */
export type EndedMessages = 'job' | 'retorque' | 'deferred'

/** What a message says beside its code. `link` opens the customer's page; `telephone` as it is dialed. */
export type MessageFacts = {
  readonly name: string
  readonly vehicle: string
  readonly shop: string
  readonly telephone: string | null
  readonly link: string | null
  /** Sentences of the ledger's own words: when to come back, or the work that was put off. */
  readonly lines: readonly string[]
}

/** What is sent to a customer, by e-mail and to a telephone. */
export type MessagesWording = {
  readonly subjects: Readonly<Record<MessageAbout, (of: MessageFacts) => string>>
  /** The paragraphs of an e-mail, one after the other. */
  readonly letters: Readonly<Record<MessageAbout, (of: MessageFacts) => readonly string[]>>
  /** To a telephone: short, and only what the desk sends itself. */
  readonly texts: Readonly<Record<'estimate' | 'report', (of: MessageFacts) => string>>
  /** Under every e-mail: why it came, and how to end such messages. */
  readonly under: (of: MessageFacts & { readonly stop: string; readonly about: EndedMessages }) => string
  /** The page behind the link that ends messages. */
  readonly stop: {
    readonly title: string
    readonly ask: Readonly<Record<EndedMessages, (shop: string) => string>>
    readonly button: string
    readonly done: Readonly<Record<EndedMessages, (shop: string) => string>>
    readonly unknown: string
  }
}
