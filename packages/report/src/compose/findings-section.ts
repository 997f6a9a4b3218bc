import { inOrderOfReading, severityOf } from '@bayledger/ledger/questions/severity'
import type { OrderState } from '@bayledger/ledger/state'
import type { Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import { capitalized } from '@bayledger/wording/capitalized'
import { english } from '@bayledger/wording/en/english'
import { fieldTitle, seenWords, uncheckedLines } from '@bayledger/wording/fields'
import { reasonWords } from '@bayledger/wording/reasons'
import { nextAction, sentenceFor, wordedContradiction } from '@bayledger/wording/worded-diagnosis'
import type { FindingLine, Section } from '../content.ts'
import { paragraph } from './blocks.ts'
import { personalText, type ReportContext } from './context.ts'
import { number } from './figures.ts'
import { authorName } from './people.ts'
import { unitWords } from './proof-figure.ts'

const { findings: says } = english.report

/** Findings with their reasons, what contradicts itself, and what is not known. */
export const findingsSection = (state: OrderState, context: ReportContext): Section => {
  const issued = state.diagnosis
  const { title } = says
  if (!issued) return { title, blocks: [paragraph(says.notIssued)] }
  const { diagnosis, evidence } = issued
  const lines: FindingLine[] = [
    ...inOrderOfReading(diagnosis.findings, diagnosis.primary).map((finding) => ({
      severity: severityOf(finding, diagnosis.primary),
      sentence: sentenceFor(english, finding),
      reasons: [
        says.named(english.findingTitles[finding.code], english.confidence[finding.confidence].word),
        ...finding.because.map(reasonLine),
        says.next(nextAction(english, finding)),
      ],
    })),
    ...diagnosis.contradictions
      .map((one) => wordedContradiction(english, one))
      .map(({ says: sentence, do: next }) => ({
        severity: 'contradiction' as const,
        sentence,
        reasons: [says.next(next)],
      })),
    ...unchecked(diagnosis.unchecked),
    ...(evidence.notPossible ?? []).map(({ field, why }) => ({
      severity: 'could-not-be-checked' as const,
      sentence: says.notPossible(fieldTitle(english, field), why),
      reasons: [],
    })),
  ]
  return {
    title,
    blocks: [
      paragraph(says.computed(diagnosis.ruleSet, confirmation(state, context)), issued.written.seq),
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
          sentence: says.unchecked,
          reasons: uncheckedLines(english, fields),
        },
      ]

const reasonLine = (reason: Reason): string => {
  const value =
    typeof reason.value === 'number'
      ? `${number(reason.value, reason.unit ?? '')} ${unitWords(reason)}`.trim()
      : plainValue(reason)
  const shows = reasonWords(english, reason)
  // "Left front damage to the tire: a bulge" says it once.
  const isSaidThere = value === '' || (typeof reason.value !== 'number' && shows.includes(value))
  return capitalized(`${seenWords(english, reason.field)}${isSaidThere ? '' : ` ${value}`}: ${shows}`)
}

/** A sensor's ID is shortened here too: this is the customer's copy. */
const plainValue = ({ value, field }: Reason): string => {
  if (value === null) return says.values['not-checked']
  if (typeof value === 'boolean') return says.values[value ? 'yes' : 'no']
  const text = String(value)
  if (/(^|\.)ids?(\.|$)|strayIds/.test(field)) return `…${text.slice(-4)}`
  return Object.hasOwn(says.values, text) ? says.values[text as keyof typeof says.values] : text
}

const confirmation = (state: OrderState, context: ReportContext): string => {
  const confirmed = state.diagnosis?.confirmed
  if (!confirmed) return says.confirmation.open
  const who = authorName(context, confirmed.written.by)
  return confirmed.agrees
    ? says.confirmation.agrees(who)
    : says.confirmation.differs(who, confirmed.ownFinding, personalText(context, confirmed.reason))
}
