export type PlanLine = {
  text: string
  unit?: string
  /** Drawn large: the wheel's one figure. The first such line counts; all others are words below and beside it. */
  isFigure?: boolean
}

/** A wheel that a finding concerns, by shape and word, in one ink. */
export type PlanMark = {
  /** `bar`: a solid bar across its top; `thick` and `thin`: a rule at its left; `dashed`: its outline. */
  shape: 'bar' | 'thick' | 'thin' | 'dashed'
  word: string
}

export type PlanWheel = {
  lines: readonly PlanLine[]
  /** `current`: at work now, drawn largest; `off`: off the vehicle, not torqued or not checked, drawn as a thick open ring. */
  state: 'none' | 'current' | 'off'
  mark?: PlanMark
  /** Printed large in the ring of a wheel that is not secured; "OFF" where it is not given. */
  ringWord?: string
  /** All that the cell says, in words: "left front: 22 psi by gauge". A button's name, or read in its place. */
  label: string
}
