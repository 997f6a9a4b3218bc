import type { TextsContent } from '@bayledger/contract/texts'
import { type MessageAbout, messagesAbout, placesIn, templateFault } from '@bayledger/ledger/message-template'
import { messages as english } from '@bayledger/wording/en/messages'
import { messages as spanish } from '@bayledger/wording/es/messages'
import { letterText } from '@bayledger/wording/messages'
import { templateFaultWords } from '../../../lib/fault-words.ts'
import { type RecordRow, textIn } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

const languages = [
  { code: 'en', name: 'English', messages: english },
  { code: 'es', name: 'Spanish', messages: spanish },
] as const

const names: Readonly<Record<MessageAbout, string>> = {
  estimate: 'The link to the estimate',
  report: 'The report is ready',
  retorque: 'Reminder of the torque check',
  deferred: 'Reminder of work that was put off',
}

const keyOf = (about: MessageAbout, code: 'en' | 'es') => `messages.${about}.${code}`

/** The rows of the shop's own messages. `shop`: its name, for the message as it goes out. */
export const messageRows = (shop: string, telephone: string | null): readonly RecordRow[] =>
  messagesAbout.flatMap((about) =>
    languages.map(
      ({ code, name, messages }): RecordRow => ({
        ...{ kind: 'text', key: keyOf(about, code), label: `${names[about]}, in ${name}` },
        hint: `Filled in: ${placesIn(about).join(', ')}.`,
        ...{ lines: 3, most: 600, optional: 'the program’s own words' },
        fault: (typed) => {
          const fault = templateFault(about, typed)
          return fault === null ? undefined : templateFaultWords(fault)
        },
        preview: (typed) => {
          const { when, work, ...customer } = messages.example
          const lines = about === 'retorque' ? [when] : about === 'deferred' ? work : []
          return letterText(messages, about, { ...customer, shop, telephone, lines }, typed || null)
        },
        ...(about === 'estimate' && code === 'en' ? { part: 'Messages to customers' } : {}),
      }),
    ),
  )

export const messageValues = (messages: TextsContent['messages']): RowValues =>
  Object.fromEntries(
    messagesAbout.flatMap((about) =>
      languages.map(({ code }) => [keyOf(about, code), messages[about][code] ?? '']),
    ),
  )

export const messageContent = (values: RowValues): TextsContent['messages'] => {
  const of = (about: MessageAbout) => ({
    en: textIn(values, keyOf(about, 'en')) || null,
    es: textIn(values, keyOf(about, 'es')) || null,
  })
  return {
    estimate: of('estimate'),
    report: of('report'),
    retorque: of('retorque'),
    deferred: of('deferred'),
  }
}
