/** What is usual where somebody typed a value that may be right and is likely not. */
export const doubtWords = {
  altitude: (low: number, high: number) =>
    `usual is ${low} to ${high} feet above sea level; is it typed in meters, or with a digit too many?`,
  offset: (psi: number) =>
    `a gauge that differs from the master by more than ${psi} psi is usually set aside; read it again`,
  scale: (other: string, here: string) =>
    `scales usually do not end there, and many end at ${other}, which is ${here}; read the unit beside the figure`,
  overdue: 'the day is over, so this wrench cannot be used until it is calibrated',
  dueToday: 'this wrench can be used today and not from tomorrow on',
  longInterval: (latest: string) =>
    `a wrench is due twelve months after its calibration at the latest, here ${latest}, unless it was first used later`,
  tax: (most: number) =>
    `usual is 0 to ${most} %; is a decimal point missing? Every estimate that is built from now on takes it`,
  laborRate: (low: number, high: number) =>
    `usual is ${low} to ${high} dollars an hour; is a digit missing or too many?`,
} as const

/** Why a row of a file of instruments is refused, and what to do. */
export const registerCellWords = {
  sameKind: {
    reason: 'The register has this code as the other kind.',
    do: 'Give it a code of its own, and import the file again.',
  },
  cannotBe: {
    reason: 'This cell is empty where this kind needs it, or does not fit the others.',
    do: 'Correct it in the file and import the file again. A scale begins below its end, and a calibration is before its due day.',
  },
  doubtful: (usual: string) => ({
    reason: `This is likely a slip: ${usual}.`,
    do: 'Correct it in the file; if it is right, enter this instrument on the page, which asks.',
  }),
} as const

/** What is allowed where only the register itself can tell. */
export const registerWords = {
  freeCode: 'a code that no other wrench or gauge of the shop has',
  freeName: 'a name that no other place of the shop has',
  sameKind: 'the kind that it was entered as; enter another instrument instead',
  staysOut: 'out, as it is: enroll the tablet again with a new code from the desk',
  notInFuture: 'today or a day before',
} as const
