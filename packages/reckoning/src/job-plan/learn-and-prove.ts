import { relearnOrder } from '../relearn/relearn-template.ts'
import { cameFrom, type Moves, movedPlaces } from '../rotation/moves.ts'
import { relearnOf, type SheetRelearn, type SpecificationSheet } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import type { WheelPosition } from '../wheels.ts'
import type { StepDraft } from './step-of.ts'

const relearnKey = 'vehicle.relearn.done'
const driveKey = 'vehicle.proof.drive'

/** Minutes of driving in which a warning would come: 49 CFR 571.138 S4.2 and S4.4 allow the system 20. */
const proofMinutes = 20

export type Proving = {
  readonly sheet: SpecificationSheet
  /** Wheels whose sensor must answer at the end. */
  readonly heard: readonly WheelPosition[]
  /** Wheels that changed places. */
  readonly moves: Moves
  /** The bundle whose work the vehicle must learn of; `null` where it has nothing to learn. */
  readonly learns: string | null
  /** What is done before anything is learned or proven: pressures, spare, the last look. */
  readonly after: readonly string[]
  /** The second person's checks, without which nothing moves on the road. */
  readonly checks: readonly string[]
}

/**
 * The steps by which the vehicle learns and the light is proven to stay off, each with the bundle that it belongs to
 * where that is not the first one. A vehicle that learns by driving learns on the proof drive itself; any other learns
 * standing, before the drive.
 *
 * @units Minutes: the 20 that a system may take to warn, or the sheet's own where they are more.
 * @limits The vehicle maker's procedure governs; where the sheet has none, none is guessed.
 * @source 49 CFR 571.138 S4.2 and S4.4, from memory. The steps: common practice, no source; the procedure: the sheet.
 */
export const learnAndProve = (
  of: Proving,
): { readonly learning: StepDraft[]; readonly proving: StepDraft[] } => {
  const { sheet, learns, after, checks } = of
  const relearn = relearnOf(sheet)
  const byDriving = learns !== null && relearn?.method === 'automatic' ? relearn : null
  if (byDriving !== null) {
    const reads = closingReads(of, after)
    const drive = learningDrive(sheet, byDriving, [...after, ...keysOf(reads), ...checks])
    const learned = confirmLearned(sheet)
    return { learning: [], proving: [...reads, drive, learned, ...compareStored(of, [relearnKey]), seeLight] }
  }
  const learning = learns === null ? [] : [relearnStep(sheet, after, checks)]
  const settled = learning.length > 0 ? [relearnKey] : after
  const reads = closingReads(of, settled)
  return {
    learning,
    proving: [
      ...reads,
      ...compareStored(of, settled),
      proofDrive([...settled, ...keysOf(reads), ...checks]),
      seeLight,
    ],
  }
}

const keysOf = (steps: readonly StepDraft[]): string[] => steps.map(({ stepKey }) => stepKey)

/** The relearn or reset that the sheet describes, standing; one that the sheet does not describe may be driven. */
const relearnStep = (
  sheet: SpecificationSheet,
  after: readonly string[],
  checks: readonly string[],
): StepDraft => {
  const relearn = relearnOf(sheet)
  return {
    stepKey: relearnKey,
    code: 'relearn',
    values: {
      method: relearn?.method ?? (sheet.system === 'indirect' ? 'reset' : 'stationary'),
      order: [...relearnOrder(sheet)],
    },
    procedure: relearn,
    closedBy: 'relearn.done',
    figure: relearn ? timeLimit(relearn, sheet.name) : null,
    needs: ['value'],
    waitsFor: [...after, ...(relearn === null ? checks : [])],
  }
}

const timeLimit = ({ timeLimitMinutes }: SheetRelearn, reference: string): StepFigure | null =>
  timeLimitMinutes
    ? { kind: 'minutes', minutes: timeLimitMinutes, of: 'time-limit', source: { from: 'sheet', reference } }
    : null

const closingReads = ({ heard }: Proving, after: readonly string[]): StepDraft[] =>
  heard.map((wheel) => ({
    stepKey: `${wheel}.closing.read`,
    code: 'read-sensor',
    values: {},
    wheel,
    closedBy: 'wheel.checked',
    needs: ['value'],
    waitsFor: after,
  }))

const compareStored = ({ sheet, moves }: Proving, after: readonly string[]): StepDraft[] =>
  sheet.system === 'direct'
    ? [
        {
          stepKey: 'vehicle.closing.module',
          code: 'compare-stored',
          values: { moved: movedPlaces(moves).map((place) => ({ place, from: cameFrom(moves, place) })) },
          closedBy: 'module.read',
          needs: ['value'],
          waitsFor: after,
        },
      ]
    : []

const ofTheRule: StepFigure = {
  kind: 'minutes',
  minutes: proofMinutes,
  of: 'proof-drive',
  source: { from: 'federal-rule' },
}

const proofDrive = (after: readonly string[]): StepDraft => ({
  stepKey: driveKey,
  code: 'proof-drive',
  values: {},
  closedBy: 'drive.done',
  figure: ofTheRule,
  needs: ['value'],
  waitsFor: after,
  cautions: ['road'],
})

const learningDrive = (
  { name }: SpecificationSheet,
  procedure: SheetRelearn,
  after: readonly string[],
): StepDraft => {
  const minutes = procedure.driveMinutes ?? 0
  return {
    stepKey: driveKey,
    code: 'learning-drive',
    values: {},
    procedure,
    closedBy: 'drive.done',
    figure:
      minutes > proofMinutes
        ? { kind: 'minutes', minutes, of: 'proof-drive', source: { from: 'sheet', reference: name } }
        : ofTheRule,
    needs: ['value'],
    waitsFor: after,
    cautions: ['road'],
  }
}

const confirmLearned = (sheet: SpecificationSheet): StepDraft => ({
  stepKey: relearnKey,
  code: 'confirm-learned',
  values: { order: [...relearnOrder(sheet)] },
  closedBy: 'relearn.done',
  needs: ['value'],
  waitsFor: [driveKey],
})

const seeLight: StepDraft = {
  stepKey: 'vehicle.closing.light',
  code: 'see-light',
  values: {},
  closedBy: 'telltale.observed',
  needs: ['value'],
  waitsFor: [driveKey],
}
