import type { AgreedChoice, AskedChannel, AskedPurpose } from '@bayledger/contract/messages'
import { type Clock, day } from '../../../lib/format.ts'

export const purposes: readonly { readonly value: AskedPurpose; readonly label: string }[] = [
  { value: 'job', label: 'the vehicle that is here' },
  { value: 'retorque', label: 'the torque check' },
  { value: 'deferred', label: 'work put off' },
  { value: 'recall', label: 'a recalled part of ours' },
]

const ways: Readonly<Record<AskedChannel, string>> = {
  call: 'called',
  text: 'texted',
  email: 'e-mailed',
}

/** An answer of more than a year ago is asked for again: this program's own rule. */
const oldAfterMs = 365 * 24 * 3_600_000

/** Whether something was never asked for, or long ago. */
export const isToBeAsked = (choices: readonly AgreedChoice[], now: number): boolean =>
  choices.some(({ askedAt }) => askedAt === null || now - Date.parse(askedAt) > oldAfterMs)

/** What a customer agrees to, a sentence for each way to reach them, and from when that is. */
export const askedWords = (choices: readonly AgreedChoice[], now: string, clock: Clock): string[] => {
  const agreed = (Object.keys(ways) as AskedChannel[]).flatMap((channel) => {
    const about = purposes.filter(({ value }) =>
      choices.some((one) => one.channel === channel && one.purpose === value && one.allowed),
    )
    return about.length === 0
      ? []
      : [`May be ${ways[channel]} about ${about.map(({ label }) => label).join(', ')}.`]
  })
  const asked = choices.flatMap(({ askedAt }) => askedAt ?? []).sort()
  const [oldest] = asked
  return [
    ...(agreed.length === 0 ? ['Agrees to no call and no message.'] : agreed),
    oldest === undefined
      ? 'Never asked by purpose: it is what the card says.'
      : asked.length < choices.length
        ? 'Not asked about all of it yet.'
        : `Asked ${day(oldest, now, clock)}.`,
  ]
}
