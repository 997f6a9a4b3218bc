import type { Instrument } from '@bayledger/contract/settings'
import type { GaugeUsed } from '@bayledger/ledger/subjects/arrival/kinds'

export type Gauge = Extract<Instrument, { kind: 'gauge' }>

export const whyNotGauge = (gauge: Gauge, today: string): string | undefined => {
  if (gauge.quarantined) return 'Quarantined: it did not agree with the master gauge. Take another.'
  return gauge.dueOn !== null && gauge.dueOn < today
    ? `Overdue: its check was due ${gauge.dueOn}.`
    : undefined
}

export const gaugeWords = ({ correctionPsi }: Gauge): string =>
  correctionPsi === 0
    ? 'agrees with the master gauge'
    : `${correctionPsi > 0 ? '+' : '−'}${Math.abs(correctionPsi)} psi against the master gauge`

/** What to know while reading this gauge; `undefined` where it agrees with the master. */
export const gaugeHint = ({ code, correctionPsi }: Gauge): string | undefined =>
  correctionPsi === 0
    ? undefined
    : `${code} shows ${Math.abs(correctionPsi)} psi too ${correctionPsi > 0 ? 'much' : 'little'}: type what it shows, the record is corrected.`

/** What is on this gauge when a tire holds so many psi. */
export const shownAt = (psi: number, { correctionPsi }: Gauge): string => (psi + correctionPsi).toFixed(1)

export const gaugeUsed = ({ instrumentId, code, correctionPsi }: Gauge): GaugeUsed => ({
  instrumentId,
  code,
  correctionPsi,
  offsetPsi: correctionPsi,
})
