import { filledIn, ownMessagesIn } from '@bayledger/ledger/message-template'
import type { CustomerLanguage } from '@bayledger/wording/language'
import { type MessageFacts, templateValues } from '@bayledger/wording/messages'

/** The message with a customer's link, in their language: the shop's own words, or the usual short ones. */
export const linkMessage = (
  settings: readonly { readonly kind: string; readonly body: unknown }[],
  about: 'estimate' | 'report',
  of: MessageFacts,
  { code, messages }: Pick<CustomerLanguage, 'code' | 'messages'>,
): string => {
  const own = ownMessagesIn(settings.find(({ kind }) => kind === 'report-head')?.body)[about][code]
  return own === null ? messages.texts[about](of) : filledIn(own, templateValues(of))
}

/** What is printed with the code: what the link is for, for how long it is good, and whom to call when it is over. */
export const printedLink = (
  settings: readonly { readonly kind: string; readonly body: unknown }[],
  about: 'estimate' | 'report',
  of: MessageFacts,
  { messages }: Pick<CustomerLanguage, 'messages'>,
): readonly string[] => {
  const head = settings.find(({ kind }) => kind === 'report-head')?.body
  const { telephone } = (head ?? {}) as { readonly telephone?: unknown }
  return [
    messages.texts[about](of),
    messages.after[about]({ ...of, telephone: typeof telephone === 'string' ? telephone : null }),
  ]
}
