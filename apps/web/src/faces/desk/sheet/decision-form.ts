import { areAlternatives } from '@bayledger/ledger/questions/alternatives'
import type { PayloadOf } from '@bayledger/ledger/registry'
import { isSameName } from '@bayledger/ledger/same-name'
import type { Answer } from '@bayledger/reckoning/estimate'
import type { ShownBundle } from '@bayledger/wording/shown-estimate'
import { telephoneWords } from '@bayledger/wording/telephone'
import { personal, sealSide } from '../../../features/ledger/draft-entry.ts'
import { decisionFaults } from '../../../lib/fault-words.ts'
import type { Signature } from '../../../ui/signature-pad.tsx'
import { signatureText } from '../../../ui/signature-text.ts'

type Decided = PayloadOf<'estimate.decided'>

export type DecisionChannel = 'in-person' | 'telephone'

/** What is filled in while the customer decides. */
export type DecisionForm = {
  readonly given: Readonly<Record<string, Answer>>
  readonly name: string
  readonly relation: Decided['by']['relation'] | null
  readonly signature: Signature | null
  readonly number: string
  readonly said: string
  readonly wishes: readonly ('electronic' | 'parts')[]
}

/** Nothing is decided; the name and number are those of the customer on record. */
export const blankDecision = (customer: {
  name: string
  phone?: string | null | undefined
}): DecisionForm => ({
  given: {},
  name: customer.name,
  relation: null,
  signature: null,
  number: customer.phone ? telephoneWords(customer.phone) : '',
  said: '',
  wishes: [],
})

/** What is missing, in words; `undefined` if the decision can be recorded. */
export const missingInDecision = (
  { given, relation, name, signature, number, said }: DecisionForm,
  channel: DecisionChannel,
  asked: readonly Pick<ShownBundle, 'bundleKey'>[],
): string | undefined => {
  if (asked.some(({ bundleKey }) => given[bundleKey] === undefined)) return decisionFaults.unanswered
  if (Object.keys(given).length === 0) return decisionFaults.nothingChanged
  if (relation === null) return decisionFaults.nobody
  if (name.trim() === '') return decisionFaults.noName
  if (channel === 'in-person' && signature === null) return decisionFaults.noSignature
  if (channel === 'in-person' && signature?.form === 'typed' && !isSameName(signature.name, name))
    return decisionFaults.anotherName
  if (channel === 'telephone' && (number.trim() === '' || said.trim() === '')) return decisionFaults.noCall
  return undefined
}

/** The consent as the entry holds it, and the texts that are kept beside the entry. */
export const consentOf = ({ number, said, signature }: DecisionForm, channel: DecisionChannel) => {
  if (channel === 'telephone') {
    const [called, answered] = [sealSide(number.trim()), personal(said.trim())]
    return {
      consent: {
        channel,
        number: called.digest,
        calledAt: new Date().toISOString(),
        answerWords: answered.digest,
      },
      sides: [called, answered],
    } as const
  }
  const text = personal(signature === null ? '' : signatureText(signature))
  return {
    consent: { channel, signature: { form: signature?.form ?? 'typed', digest: text.digest } },
    sides: [text],
  } as const
}

/** The answer to one bundle, with the cautions that were said where it is not a Yes. */
export const answerFor = (
  bundleKey: string,
  answer: Answer,
  cautions: readonly { readonly number: string; readonly version: number }[],
): Decided['answers'][number] => ({
  bundleKey,
  answer,
  deferredUntil: null,
  cautionsShown: answer === 'authorized' ? [] : cautions.map(({ number, version }) => ({ number, version })),
})

/** The answers with one more; a Yes to one of several alternatives is a No to the others that are asked about. */
export const withGiven = (
  given: DecisionForm['given'],
  bundle: ShownBundle,
  answer: Answer,
  required: readonly ShownBundle[],
): DecisionForm['given'] => ({
  ...given,
  ...(answer === 'authorized'
    ? Object.fromEntries(
        required
          .filter((other) => areAlternatives(bundle, other))
          .map(({ bundleKey }) => [bundleKey, 'declined' as const]),
      )
    : {}),
  [bundle.bundleKey]: answer,
})
