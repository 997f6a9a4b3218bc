import { inOrderOfReading, severityOf } from '@bayledger/ledger/questions/severity'
import type { OrderState } from '@bayledger/ledger/state'
import { fieldTitle, uncheckedLines } from '@bayledger/wording/fields'
import { nextAction, sentenceFor, wordedContradiction } from '@bayledger/wording/worded-diagnosis'
import type { Block, FindingLine, Section } from '../content.ts'
import { paragraph } from './blocks.ts'
import { personalText, type ReportContext } from './context.ts'
import { authorName } from './people.ts'
import { reasonLine } from './reason-line.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.findings

/** Findings with their reasons, what contradicts itself, and what is not known. */
export const findingsSection = (state: OrderState, context: ReportContext): Section => {
  const issued = state.diagnosis
  const { title } = says(context)
  if (!issued)
    return { title, blocks: [paragraph(says(context).notIssued), ...whyItCameBack(state, context)] }
  const { diagnosis, evidence } = issued
  const lines: FindingLine[] = [
    ...inOrderOfReading(diagnosis.findings, diagnosis.primary).map((finding) => ({
      severity: severityOf(finding, diagnosis.primary),
      sentence: sentenceFor(context.language, finding),
      reasons: [
        says(context).named(
          context.language.findingTitles[finding.code],
          context.language.confidence[finding.confidence].word,
        ),
        ...finding.because.map((reason) => reasonLine(context, reason)),
        says(context).next(nextAction(context.language, finding)),
      ],
    })),
    ...diagnosis.contradictions
      .map((one) => wordedContradiction(context.language, one))
      .map(({ says: sentence, do: next }) => ({
        severity: 'contradiction' as const,
        sentence,
        reasons: [says(context).next(next)],
      })),
    ...unchecked(context, diagnosis.unchecked),
    ...(evidence.notPossible ?? []).map(({ field, why }) => ({
      severity: 'could-not-be-checked' as const,
      sentence: says(context).notPossible(fieldTitle(context.language, field), why),
      reasons: [],
    })),
  ]
  return {
    title,
    blocks: [
      paragraph(says(context).computed(diagnosis.ruleSet, confirmation(state, context)), issued.written.seq),
      ...whyItCameBack(state, context),
      { kind: 'findings', findings: lines },
    ],
  }
}

/** Of a comeback only. A note beside a cause that has a word is the shop's own. */
const whyItCameBack = ({ opened, comeback }: OrderState, context: ReportContext): Block[] => {
  if (!opened?.comebackOf) return []
  const { cause, causes, notRecorded } = says(context).comeback
  if (comeback === null) return [paragraph(notRecorded)]
  const why =
    comeback.cause === 'something-else' ? personalText(context, comeback.words ?? '') : causes[comeback.cause]
  return [paragraph(cause(why), comeback.written.seq)]
}

const unchecked = (context: Spoken, fields: readonly string[]): FindingLine[] =>
  fields.length === 0
    ? []
    : [
        {
          severity: 'not-checked',
          sentence: says(context).unchecked,
          reasons: uncheckedLines(context.language, fields),
        },
      ]

const confirmation = (state: OrderState, context: ReportContext): string => {
  const confirmed = state.diagnosis?.confirmed
  if (!confirmed) return says(context).confirmation.open
  const who = authorName(context, confirmed.written.by)
  return confirmed.agrees
    ? says(context).confirmation.agrees(who)
    : says(context).confirmation.differs(who, confirmed.ownFinding, personalText(context, confirmed.reason))
}
