import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { OrderState } from '../state.ts'
import { type FindingSeverity, severityOf } from './severity.ts'

/** How a customer is told of a finding. */
export type ToldSeverity = Exclude<FindingSeverity, 'also-found' | 'for-information' | 'not-checked'>

export type ToldFinding = { readonly finding: Finding; readonly severity: ToldSeverity }

/**
 * What a customer is told, on their phone and by telephone, once a technician has confirmed it: what stops the vehicle, and
 * then what explains the light. What else was found is the shop's own matter until it is offered.
 */
export const toldFindings = (state: OrderState): readonly ToldFinding[] => {
  const diagnosis = confirmedDiagnosis(state)
  const told = (diagnosis?.findings ?? []).flatMap((finding): ToldFinding[] => {
    const severity = toldAs(finding, diagnosis?.primary ?? null)
    return severity === null ? [] : [{ finding, severity }]
  })
  return [...told.filter(isStop), ...told.filter((one) => !isStop(one))]
}

/** The diagnosis that a technician has confirmed, as long as no fact has changed since; `null`: there is none. */
export const confirmedDiagnosis = ({ diagnosis }: OrderState) =>
  diagnosis?.confirmed && !diagnosis.outdated ? diagnosis.diagnosis : null

const isStop = ({ severity }: ToldFinding): boolean => severity !== 'cause' && severity !== 'unexplained'

/** One that needs another question answered first is told too, but never as the cause. */
const toldAs = (finding: Finding, primary: string | null): ToldSeverity | null => {
  const severity = severityOf(finding, primary)
  if (finding.kind === 'stop' || severity === 'cause') return severity as ToldSeverity
  return finding.code === primary ? 'unexplained' : null
}
