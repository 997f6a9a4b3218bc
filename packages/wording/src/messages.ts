import type { MessageAbout, TemplateValues } from '@bayledger/ledger/message-template'
import { filledIn } from '@bayledger/ledger/message-template'

/** What is sent: what a shop may have its own words for, and another time than was promised. */
export type SentAbout = MessageAbout | 'new-time'

/** What a customer stops at once: messages of the job, the reminder of the torque check, reminders of work put off. */
export type EndedMessages = 'job' | 'retorque' | 'deferred'

/** What a message says beside its code. `link` opens the customer's page; `telephone` as it is dialed. */
export type MessageFacts = {
  readonly name: string
  readonly vehicle: string
  readonly shop: string
  readonly telephone: string | null
  readonly link: string | null
  /** Of the ledger's own words: when to come back, the work that was put off, or the time that is promised now. */
  readonly lines: readonly string[]
}

/** What is sent to a customer, by e-mail and to a telephone. */
export type MessagesWording = {
  readonly subjects: Readonly<Record<SentAbout, (of: MessageFacts) => string>>
  /** What an e-mail says, with its places in braces; a shop may have its own words in place of these. */
  readonly usual: Readonly<Record<SentAbout, string>>
  /** The paragraph after it, which is always the program's: what is safe to do, for how long the link is good. */
  readonly after: Readonly<Record<SentAbout, (of: MessageFacts) => string>>
  /** A customer and a visit that are made up, to show a shop how its message goes out. */
  readonly example: Pick<MessageFacts, 'name' | 'vehicle' | 'link'> & {
    readonly when: string
    readonly work: readonly string[]
  }
  /** To a telephone: short, and only what the desk sends itself. */
  readonly texts: Readonly<Record<'estimate' | 'report' | 'new-time', (of: MessageFacts) => string>>
  /** Under every e-mail: why it came, and how to end such messages. */
  readonly under: (of: MessageFacts & { readonly stop: string; readonly about: EndedMessages }) => string
  /** What an owner of a vehicle is told where a figure of its sheet was wrong. */
  readonly wrongFigure: (vehicle: string) => string
  /** The page behind the link that ends messages. */
  readonly stop: {
    readonly title: string
    readonly ask: Readonly<Record<EndedMessages, (shop: string) => string>>
    readonly button: string
    readonly done: Readonly<Record<EndedMessages, (shop: string) => string>>
    readonly unknown: string
  }
}

/** What fills the places of a message. */
export const templateValues = ({ name, vehicle, shop, link, lines }: MessageFacts): TemplateValues => ({
  ...{ name, vehicle, shop, link: link ?? '' },
  when: lines.join(' '),
  work: lines.map((line) => `- ${line}`).join('\n'),
})

/** An e-mail's paragraphs: the shop's own words or the usual ones, then what the program always says. */
export const letterText = (
  { usual, after }: Pick<MessagesWording, 'usual' | 'after'>,
  about: SentAbout,
  of: MessageFacts,
  own: string | null,
): string => `${filledIn(own ?? usual[about], templateValues(of))}\n\n${after[about](of)}`
