import { describe, expect, it } from 'vitest'
import { airBringing, everythingBefore, plans } from '../../test-support/any-plan.ts'
import { tiresOf } from '../sheet.ts'
import { axleOf } from '../wheels.ts'

describe('any job plan', () => {
  it('lifts the vehicle once and lowers it once', () => {
    let lifted = 0
    plans((steps) => {
      const heights = steps.map(({ height }) => height)
      const changes = heights.filter((height, at) => height !== heights[at - 1])
      const moves = steps.map(({ code }) => code).filter((code) => /^(lift|lower)-/.test(code))
      if (!heights.includes('lifted')) {
        expect(moves).toEqual([])
        return expect(changes.join(' ')).toMatch(/^(floor)?$/)
      }
      lifted += 1
      expect(changes.join(' ')).toMatch(/^(floor )?lifted touching floor$/)
      expect(moves).toEqual(['lift-vehicle', 'lower-to-touching', 'lower-fully'])
      const before = everythingBefore(steps)
      for (const { stepKey, closedBy, round, wheel } of steps) {
        const needed = before.get(stepKey)
        if (closedBy === 'wheel.removed') expect(needed).toContain('vehicle.lift.up')
        if (closedBy === 'wheel.mounted') expect(before.get('vehicle.lift.touching')).toContain(stepKey)
        const isRound = round !== null && steps.some(({ stepKey: key }) => key === `${wheel}.wheel.on`)
        if (isRound) expect(needed).toContain('vehicle.lift.touching')
        if (isRound) expect(needed).toContain(`${wheel}.wheel.on`)
        if (closedBy === 'pressure.set') expect(needed).toContain('vehicle.lift.down')
      }
    })
    expect(lifted).toBeGreaterThan(200)
  })

  it('opens no tire before its purge, and brings none that was run low to air before the look inside', () => {
    let [purged, looked, restrained] = [0, 0, 0]
    plans((steps, sheet, _works, dangers) => {
      const before = everythingBefore(steps)
      for (const { stepKey, code, wheel, needs } of steps) {
        if (wheel === null) continue
        const [sealant, runLow] = [dangers.sealant.includes(wheel), dangers.runLow.includes(wheel)]
        if (code === 'open-tire') {
          expect([...(before.get(stepKey) ?? [])].includes(`${wheel}.tire.purge`)).toBe(sealant)
          purged += sealant ? 1 : 0
        }
        if (code === 'purge-sealant' || code === 'purge-in-restraint') {
          expect(sealant).toBe(true)
          expect(code === 'purge-in-restraint').toBe(runLow)
          expect(needs).toContain('second-person')
          if (wheel !== 'SP') expect(before.get(stepKey)).toContain(`${wheel}.wheel.off`)
        }
        if (airBringing.has(code) && runLow) {
          looked += 1
          expect(before.get(stepKey), stepKey).toContain(`${wheel}.tire.inside`)
        }
        const loadClass = tiresOf(sheet)?.[axleOf(wheel)]?.loadClass
        if (code === 'inflate-tire' || code === 'inflate-in-restraint') {
          const isHeld = runLow && loadClass !== 'SL' && loadClass !== 'XL'
          restrained += isHeld ? 1 : 0
          expect(code === 'inflate-in-restraint').toBe(isHeld)
        }
      }
    })
    for (const count of [purged, looked, restrained]) expect(count).toBeGreaterThan(50)
  })
})
