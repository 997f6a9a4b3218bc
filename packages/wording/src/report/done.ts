import type { RelearnResult } from './proof.ts'

/** Wheels that were torqued to one figure. `wheels` by name; `took` a duration. */
export type TorqueDone = {
  readonly wheels: readonly string[]
  readonly figure: string
  readonly took: string | null
  readonly check: {
    readonly by: 'second-person' | 'same-person'
    readonly minutesLater: number | null
  } | null
}

/** One target and the tires that were set to it. `road`: the four by name, `null` where it is all of them. */
export type PressureDone = {
  readonly psi: string
  readonly road: readonly string[] | null
  readonly spare: boolean
}

/** Why the tires were set to what they were. */
export type SetBy = 'day' | 'label' | 'limit'

export type ReportDoneWording = {
  readonly onlyLooked: string
  readonly nothingRecorded: string
  readonly fitted: (sensors: readonly { readonly wheel: string; readonly id: string }[]) => string
  readonly done: (work: readonly string[]) => string
  readonly notTorqued: (wheels: readonly string[]) => string
  readonly torqued: (of: TorqueDone) => string
  readonly set: (groups: readonly { readonly by: SetBy; readonly set: readonly PressureDone[] }[]) => string
  /** What the vehicle was made to learn and how the light was proven; `null` where it was not done. */
  readonly proven: (of: {
    readonly relearn: RelearnResult | 'reset' | null
    readonly drive: {
      readonly minutes: number
      readonly byTheClock: number | null
      readonly isLightOff: boolean
    } | null
  }) => string
  /** What is paid is without what was given back. */
  readonly price: (price: string, paid: string, givenBack: string | null) => string
}
