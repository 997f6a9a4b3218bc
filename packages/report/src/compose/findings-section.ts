import { inOrderOfReading, severityOf } from '@bayledger/ledger/questions/severity'
import type { OrderState } from '@bayledger/ledger/state'
import type { Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import { english } from '@bayledger/wording/en/english'
import { fieldTitle, seenWords, uncheckedLines } from '@bayledger/wording/fields'
import { reasonWords } from '@bayledger/wording/reasons'
import { nextAction, sentenceFor, wordedContradiction } from '@bayledger/wording/worded-diagnosis'
import type { FindingLine, Section } from '../content.ts'
import { personalText, type ReportContext } from './context.ts'
import { number, sentence } from './figures.ts'
import { authorName } from './people.ts'
import { unitWords } from './proof-figure.ts'

/** Findings with their reasons, what contradicts itself, and what is not known. */
export const findingsSection = (state: OrderState, context: ReportContext): Section => {
  const issued = state.diagnosis
  const title = 'Findings'
  if (!issued)
    return {
      title,
      blocks: [{ kind: 'paragraph', text: 'No findings were issued on this order.', entry: null }],
    }
  const { diagnosis, evidence } = issued
  const lines: FindingLine[] = [
    ...inOrderOfReading(diagnosis.findings, diagnosis.primary).map((finding) => ({
      severity: severityOf(finding, diagnosis.primary),
      sentence: sentenceFor(english, finding),
      reasons: [
        `${english.findingTitles[finding.code]}. ${english.confidence[finding.confidence].word}.`,
        ...finding.because.map(reasonLine),
        `Next: ${nextAction(english, finding)}`,
      ],
    })),
    ...diagnosis.contradictions
      .map((one) => wordedContradiction(english, one))
      .map(({ says, do: next }) => ({
        severity: 'contradiction' as const,
        sentence: says,
        reasons: [`Next: ${next}`],
      })),
    ...unchecked(diagnosis.unchecked),
    ...(evidence.notPossible ?? []).map(({ field, why }) => ({
      severity: 'could-not-be-checked' as const,
      sentence: `${fieldTitle(english, field)}: ${why}`,
      reasons: [],
    })),
  ]
  return {
    title,
    blocks: [
      {
        kind: 'paragraph',
        text: `Computed by rule set ${diagnosis.ruleSet} from what was recorded on arrival. ${confirmation(state, context)}`,
        entry: issued.written.seq,
      },
      { kind: 'findings', findings: lines },
    ],
  }
}

const unchecked = (fields: readonly string[]): FindingLine[] =>
  fields.length === 0
    ? []
    : [
        {
          severity: 'not-checked',
          sentence: 'Not checked in this visit; the findings do not rest on these:',
          reasons: uncheckedLines(english, fields),
        },
      ]

const reasonLine = (reason: Reason): string => {
  const value =
    typeof reason.value === 'number'
      ? `${number(reason.value, reason.unit ?? '')} ${unitWords(reason)}`.trim()
      : plainValue(reason)
  const says = reasonWords(english, reason)
  // "Left front damage to the tire: a bulge" says it once.
  const isSaidThere = value === '' || (typeof reason.value !== 'number' && says.includes(value))
  return sentence(`${seenWords(english, reason.field)}${isSaidThere ? '' : ` ${value}`}: ${says}`)
}

/** A sensor's ID is shortened here too: this is the customer's copy. */
const plainValue = ({ value, field }: Reason): string => {
  if (value === null) return 'not checked'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return /(^|\.)ids?(\.|$)|strayIds/.test(field)
    ? `…${String(value).slice(-4)}`
    : String(value).replaceAll('-', ' ')
}

const confirmation = (state: OrderState, context: ReportContext): string => {
  const confirmed = state.diagnosis?.confirmed
  if (!confirmed) return 'Not yet confirmed by a technician.'
  const who = authorName(context, confirmed.written.by)
  return confirmed.agrees
    ? `Confirmed by ${who}.`
    : `${who} does not agree and finds: ${confirmed.ownFinding}. Reason: ${personalText(context, confirmed.reason)}`
}
