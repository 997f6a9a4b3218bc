import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { expect } from 'vitest'
import type { Entry, EntryOfKind } from '../src/entry.ts'
import { doerOf } from '../src/fold/foldable.ts'
import { fold } from '../src/fold.ts'
import { verifyChain } from '../src/hash-chain.ts'
import { proofOf } from '../src/questions/gates.ts'
import { bundleMoney, estimateMoney } from '../src/questions/money.ts'
import type { Kind } from '../src/registry.ts'
import { keptMoney } from './money.ts'

/**
 * The invariants of every order, checked in the bare list of entries and not in the state, so that the fold is not
 * checked by itself. `entries` ends with the entry that was admitted last.
 */
export const expectInvariants = (entries: readonly Entry[]): void => {
  const last = entries.at(-1)
  if (!last) return
  const before = standing(entries.slice(0, -1))
  const ids = entries.map(({ id }) => id)
  expect(new Set(ids).size, 'each entry is there once').toBe(ids.length)
  if (
    'stepKey' in last.payload &&
    last.payload.stepKey !== null &&
    last.kind !== 'step.set_aside' &&
    last.kind !== 'photo.attached'
  )
    expectAuthorized(before, last.payload.stepKey)
  if (last.kind === 'wheel.removed') expectArrivalComplete(before)
  if (last.kind === 'studs.torqued' || last.kind === 'torque.checked') {
    expect(last.payload.wrench.dueOn >= last.receivedAt.slice(0, 10), 'no overdue wrench').toBe(true)
    expect(last.payload.clicked, 'every nut clicked').toBe(last.payload.total)
  }
  if (last.kind === 'torque.checked') expectOther(before, last)
  if (last.kind === 'drive.done' || last.kind === 'report.sealed' || last.kind === 'order.handed_back')
    expectEveryWheelSecured(before)
  if (last.kind === 'order.withdrawn') expectEveryWheelSecured(before)
  if (last.kind === 'order.handed_back') expectLearned(before, entries)
  if (last.kind === 'estimate.issued') expectSums(last)
  if (before.some(({ kind }) => kind === 'report.sealed'))
    expect(['report.sealed', 'order.handed_back'], 'after the seal').toContain(last.kind)
}

/** Checks a whole ledger: the chain is whole, no entry is missing, and folding twice gives the same state. */
export const expectWholeLedger = (entries: readonly Entry[]): void => {
  expect(verifyChain(entries)).toEqual({ whole: true })
  const state = fold(entries)
  expect(state.marks.map(({ entryId }) => entryId)).toEqual(entries.map(({ id }) => id))
  expect(fold(JSON.parse(JSON.stringify(entries)))).toEqual(state)
}

const standing = (entries: readonly Entry[]): Entry[] => {
  const struck = new Set(
    entries.flatMap((entry) => (entry.kind === 'entry.struck' ? [entry.payload.entryId] : [])),
  )
  return entries.filter(({ id }) => !struck.has(id))
}

const ofKind = <K extends Kind>(entries: readonly Entry[], kind: K): EntryOfKind<K>[] =>
  entries.filter((entry): entry is EntryOfKind<K> => entry.kind === kind)

const expectAuthorized = (before: readonly Entry[], stepKey: string): void => {
  const plans = ofKind(before, 'plan.issued')
  const step = plans
    .toReversed()
    .flatMap(({ payload }) => payload.plan.steps)
    .find((candidate) => candidate.stepKey === stepKey)
  expect(step, `${stepKey} is planned`).toBeDefined()
  const answer = ofKind(before, 'estimate.decided')
    .toReversed()
    .flatMap(({ payload }) => payload.answers)
    .find(({ bundleKey }) => bundleKey === step?.bundleKey)
  const putsBack = ['wheel.mounted', 'studs.torqued', 'torque.checked'].includes(step?.closedBy ?? '')
  if (step?.bundleKey && !putsBack) expect(answer?.answer, `${stepKey} is authorized`).toBe('authorized')
}

const expectArrivalComplete = (before: readonly Entry[]): void => {
  const checks = ofKind(before, 'wheel.checked').filter(({ payload }) => payload.phase === 'arrival')
  for (const wheel of [...roadPositions, 'SP'] as const)
    expect(
      checks.some(
        ({ payload }) => payload.wheel === wheel && (payload.gauge || payload.notPossible.length > 0),
      ),
      `${wheel} gauged`,
    ).toBe(true)
  for (const wheel of roadPositions)
    expect(
      checks.some(
        ({ payload }) =>
          payload.wheel === wheel &&
          (payload.sensor?.answer === 'answered' || payload.sensor?.answer === 'silent'),
      ),
      `${wheel} sensor`,
    ).toBe(true)
  expect(ofKind(before, 'module.read').length, 'stored IDs').toBeGreaterThan(0)
  expect(ofKind(before, 'telltale.observed').length, 'light').toBeGreaterThan(0)
}

const fittingOf = (before: readonly Entry[], wheel: WheelPosition): Entry[] => {
  const since = before.findLastIndex(
    (entry) => entry.kind === 'wheel.mounted' && entry.payload.wheel === wheel,
  )
  return since < 0 ? [] : before.slice(since)
}

const expectOther = (before: readonly Entry[], check: EntryOfKind<'torque.checked'>): void => {
  const doers = ofKind(fittingOf(before, check.payload.wheel), 'studs.torqued')
    .filter(({ payload }) => payload.wheel === check.payload.wheel)
    .map(({ writtenBy }) => writtenBy)
  expect(doers, 'a second person is another person').not.toContainEqual(doerOf(check))
}

const expectEveryWheelSecured = (before: readonly Entry[]): void => {
  for (const wheel of roadPositions) {
    const off = before.findLastIndex(
      (entry) => entry.kind === 'wheel.removed' && entry.payload.wheel === wheel,
    )
    if (off < 0) continue
    const fitting = fittingOf(before, wheel)
    expect(before.lastIndexOf(fitting[0] as Entry), `${wheel} is on`).toBeGreaterThan(off)
    const at = (kind: 'full' | 'again'): number =>
      fitting.findLastIndex(
        (entry) =>
          entry.kind === 'studs.torqued' &&
          entry.payload.wheel === wheel &&
          entry.payload.round === kind &&
          (kind === 'full' || entry.payload.moved.length === 0),
      )
    const checked = fitting.findLastIndex(
      (entry) =>
        entry.kind === 'torque.checked' && entry.payload.wheel === wheel && entry.payload.moved.length === 0,
    )
    expect(at('full'), `${wheel} torqued`).toBeGreaterThan(0)
    expect(at('again'), `${wheel} torqued again after`).toBeGreaterThan(at('full'))
    expect(checked, `${wheel} checked after`).toBeGreaterThan(at('again'))
  }
}

const expectLearned = (before: readonly Entry[], entries: readonly Entry[]): void => {
  if (ofKind(before, 'sensor.fitted').length === 0) return
  const learned = ofKind(before, 'relearn.done').some(({ payload }) => payload.result !== 'refused')
  if (!learned)
    expect(proofOf(fold(entries)).verdict, 'nothing is proven without a relearn').not.toBe('proven')
}

const expectSums = ({ payload }: EntryOfKind<'estimate.issued'>): void => {
  const moneyOf = (bundle: { readonly money: string }) => {
    const money = bundleMoney(keptMoney, bundle.money)
    if (!money) throw new Error('the money of an admitted bundle is kept')
    return money
  }
  for (const bundle of payload.scope.bundles) {
    const { lines, totals } = moneyOf(bundle)
    expect(totals.beforeTaxCents).toBe(lines.reduce((sum, { amountCents }) => sum + amountCents, 0))
  }
  const counted = payload.scope.bundles.filter(({ alternativeTo }) => alternativeTo === null)
  expect(estimateMoney(keptMoney, payload.scope.money)?.totals.totalCents).toBe(
    counted.reduce((sum, bundle) => sum + moneyOf(bundle).totals.totalCents, 0),
  )
}
