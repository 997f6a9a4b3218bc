import { authorizedBundles, placardPsi, proofOf, roadGate } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import type { Work } from '@bayledger/reckoning/estimate'
import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { DriveAnswer, PageOne } from '../content.ts'
import { number } from './figures.ts'
import { isStoredAt } from './stored-id.ts'
import { pressureAsLeft } from './wheel-lines.ts'

const driveWords: Readonly<Record<DriveAnswer, string>> = {
  'drive-normally': 'Yes, drive normally.',
  'check-weekly': 'Yes, but check pressures weekly.',
  'do-not-drive': 'No. Please do not drive it. Call us.',
}

/** "Can I drive it?": the careful answer wherever a fact is missing. */
export const canDrive = (state: OrderState): PageOne['canDrive'] => {
  const answer = driveAnswer(state)
  return { answer, words: driveWords[answer] }
}

const driveAnswer = (state: OrderState): DriveAnswer => {
  // A refusal on record lets the customer take the vehicle; it does not make it safe.
  if (roadGate({ ...state, refusals: {} }).length > 0) return 'do-not-drive'
  // Nobody has judged the vehicle: no report says yes to that.
  if (!state.diagnosis) return 'do-not-drive'
  const careful =
    fixed(state).word !== 'Proven' ||
    state.diagnosis.diagnosis.findings.some(({ code }) => code === 'telltale-dark') ||
    safetyLeftUndone(state) ||
    roadPositions.some((wheel) => mayBeLow(state, wheel))
  return careful ? 'check-weekly' : 'drive-normally'
}

const safetyLeftUndone = (state: OrderState): boolean =>
  (state.estimates.at(-1)?.scope.bundles ?? []).some(
    ({ safety, bundleKey }) => safety && state.answers[bundleKey]?.answer !== 'authorized',
  )

/** 2 psi under the label is where the findings begin to call a tire low. */
const lowBy = 2

const mayBeLow = (state: OrderState, wheel: WheelPosition): boolean => {
  const held = pressureAsLeft(state, wheel) ?? state.arrival.wheels[wheel]?.gauge?.pressure ?? null
  const label = placardPsi(state, wheel)
  return held === null || label === null || pressureIn('psi', held) <= label - lowBy
}

/** "Is it fixed?": proven, not yet proven, or not fixed, and nothing softer. */
export const fixed = (state: OrderState): PageOne['fixed'] => {
  const proof = proofOf(state)
  switch (proof.verdict) {
    case 'not-fixed':
      return { word: 'Not fixed', words: proof.why }
    case 'not-yet-proven':
      return { word: 'Not yet proven', words: proof.why }
    case 'nothing-to-prove':
      if (!state.diagnosis) return { word: 'Not yet proven', words: 'no findings were issued' }
      return state.diagnosis.diagnosis.primary
        ? { word: 'Not fixed', words: 'the cause is found and no work on it was authorized' }
        : { word: 'Not yet proven', words: 'nothing was found to repair today' }
    case 'proven':
      return provenWith(state, proof.minutes)
  }
}

const provenWith = (state: OrderState, minutes: number): PageOne['fixed'] => {
  const off = `the light stayed off for ${number(minutes)} minutes`
  if (state.sheet?.sheet.system !== 'direct') return { word: 'Proven', words: off }
  const monitored = monitoredWheels(state)
  const recognized = monitored.filter((wheel) => isRecognized(state, wheel))
  if (recognized.length === monitored.length)
    return { word: 'Proven', words: `car recognizes all ${monitored.length} sensors and ${off}` }
  return {
    word: 'Not yet proven',
    words: `${off}, but only ${recognized.length} of ${monitored.length} sensors are shown to be recognized by the car`,
  }
}

const monitoredWheels = (state: OrderState): readonly WheelPosition[] =>
  state.sheet?.sheet.spareMonitored ? [...roadPositions, 'SP'] : roadPositions

/** The vehicle holds the wheel's ID at its place, read last; or the vehicle confirmed the wheel when it learned. */
const isRecognized = (state: OrderState, wheel: WheelPosition): boolean => {
  if (state.closing.module?.state === 'read') {
    const id =
      idOf(state, wheel, 'closing') ?? state.work[wheel]?.fitted?.sensorId ?? idOf(state, wheel, 'arrival')
    return isStoredAt(state.closing.module, wheel, id)
  }
  if (state.relearn) return state.relearn.result === 'learned' && state.relearn.confirmed.includes(wheel)
  const changesIds = authorizedBundles(state).some(({ works }) =>
    works.some(({ kind }) => changingIds.has(kind)),
  )
  return !changesIds && isStoredAt(state.arrival.module, wheel, idOf(state, wheel, 'arrival'))
}

const changingIds: ReadonlySet<Work['kind']> = new Set(['fit-sensor', 'relearn', 'rotate', 'swap-wheels'])

const idOf = (state: OrderState, wheel: WheelPosition, phase: 'arrival' | 'closing'): string | null => {
  const reading = state[phase].wheels[wheel]?.sensor?.reading
  return reading?.answer === 'answered' ? reading.id : null
}
