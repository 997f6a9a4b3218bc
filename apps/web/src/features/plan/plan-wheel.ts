export type PlanLine = {
  text: string
  unit?: string
  /** Drawn large: the wheel's one figure. The first such line counts; all others are words below and beside it. */
  isFigure?: boolean
}

export type PlanWheel = {
  lines: readonly PlanLine[]
  /** `current`: at work now, drawn largest; `off`: off the vehicle and not torqued, drawn as a thick open ring. */
  state: 'none' | 'current' | 'off'
  /** All that the cell says, in words: "left front: 22 psi by gauge". A button's name, or read in its place. */
  label: string
}
