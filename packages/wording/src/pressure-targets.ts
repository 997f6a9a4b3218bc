import type { PressureTarget, TargetRefusal } from '@bayledger/ledger/questions/pressure-target'

/** The note beside a target, for the person with the air hose. */
export type PressureTargetsWording = {
  readonly set: (target: Extract<PressureTarget, { ok: true }>) => string
  readonly refused: (refusal: TargetRefusal) => string
}

export const pressureTargetWords = (words: PressureTargetsWording, target: PressureTarget): string =>
  target.ok ? words.set(target) : words.refused(target.refusal)
