import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import type { WordedDiagnosis } from './worded-diagnosis.ts'

type Holds = (worded: WordedDiagnosis) => boolean

const of = ({ findings }: WordedDiagnosis, code: FindingCode) =>
  findings.find((finding) => finding.code === code)

const next =
  (code: FindingCode, words: RegExp): Holds =>
  (worded) =>
    words.test(of(worded, code)?.next ?? '')

const both =
  (...all: readonly Holds[]): Holds =>
  (worded) =>
    all.every((holds) => holds(worded))

/** What the remark of a worked case requires of the words, by case; the reckoning room tests its facts. */
export const mustSay: Readonly<Record<string, Holds>> = {
  K01: next('tire-low', /leak before only filling/),
  K06: next('sensor-reads-wrong', /^Verify with the master gauge/),
  K11: next('rotated-without-relearn', /^Set pressures by position, then relearn/),
  K13: next('id-duplicated', /stored list/),
  K17: both(
    next('wheel-from-another-vehicle', /load index, offset, seat and hub bore/),
    next('id-known-elsewhere', /order/),
  ),
  K22: both(next('tire-low', /leak/), next('set-then-reset', /^Set all tires, then reset/)),
  K25: next('interference-suspected', /drive/),
  K26: next('receiver-fault', /^Refer/),
  K30: next('learn-mode-open', /^Finish or leave learn mode/),
  K31: both(
    next('telltale-dark', /^Record it with a photo first/),
    ({ findings }) => !findings.some(({ customer }) => /hid|remov|disabl/.test(customer)),
  ),
  K33: next('warm-tire-hides-low', /finish cold\. Never bleed/),
  K34: next('sealant-inside', /^No flame, spark/),
  K35: next('run-low-damage-possible', /before it was inspected inside/),
  K40: next('comeback', /no charge until/),
  K43: next('no-sensor-on-arrival', /^Record it with a photo before any work/),
  K45: ({ findings }) =>
    findings.length > 0 &&
    findings.every(
      ({ customer, because }) =>
        ![customer, ...because.map(({ says }) => says)].some((one) => /\d/.test(one)),
    ),
  K50: (worded) => /The flashing fault was hiding this\.$/.test(of(worded, 'tire-low')?.customer ?? ''),
  K52: next('one-place-only', /^No work/),
  K55: next('collision-corner', /before ordering/),
  K57: next('stem-leaking', /^Do not pull or bend it\. Renew/),
  M03: (worded) =>
    of(worded, 'tire-low')?.because.some(({ says }) => /cold it has 24\.2\d* psi/.test(says)) === true,
  M06: next('not-driven-yet', /^Drive 20 minutes, then judge again/),
  T01: ({ findings }) =>
    findings.length > 0 && !findings.some(({ customer }) => /every tire is right/i.test(customer)),
  T04: ({ findings }) =>
    findings.length > 0 && !findings.some(({ customer }) => /nothing is broken/i.test(customer)),
  T12: ({ findings }) => findings.length > 0 && !findings.some(({ next }) => /drive 20 minutes/i.test(next)),
  T13: next('puncture-found', /look inside/),
}
