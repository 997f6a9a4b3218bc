import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { EventEvidence } from '@bayledger/reckoning/evidence/evidence'
import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import { asReceived } from '../../test-support/tarn.ts'
import type { OrderState } from '../state.ts'
import { evidenceOf } from './evidence-of.ts'
import { comebackDays, historyOf, nothingOnRecord } from './history-of.ts'

const day = 86_400_000

/** An order of the same vehicle, opened so many days after the other one. */
const openedAfter = (days: number, events: EventEvidence[] = []): OrderState => {
  const state = oneSensorJob('written-up', 'later').state()
  const { opened, complaint } = state
  if (!opened || !complaint) throw new RangeError('it was not written up')
  const writtenAt = new Date(Date.parse(opened.written.writtenAt) + days * day).toISOString()
  return {
    ...state,
    opened: { ...opened, written: { ...opened.written, writtenAt } },
    complaint: { ...complaint, events },
  }
}

const looked = () => oneSensorJob('checked').state()
const repaired = () => oneSensorJob('handed-back').state()
const readingOf = (history: ReturnType<typeof historyOf>, wheel: string) =>
  history.earlierReadings?.find((reading) => reading.wheel === wheel)

describe('what the shop’s records add to the evidence', () => {
  it('is "looked up: nothing" for a vehicle that was never here, which is not "not looked up"', () => {
    expect(historyOf(openedAfter(9), [], [])).toEqual(nothingOnRecord)
  })

  it('holds the last gauge reading of each tire with its temperature, altitude, gauge and age in days', () => {
    const history = historyOf(openedAfter(9), [looked()], [])
    expect(readingOf(history, 'LF')).toEqual({
      wheel: 'LF',
      pressure: asReceived.LF.psi,
      temperature: 27,
      altitude: 820,
      gauge: 'GA-1',
      daysAgo: 9,
    })
  })

  it('takes a reading from higher up for what it is: the air there pushes back less', () => {
    const { surroundings, ...here } = looked()
    if (!surroundings) throw new RangeError('the surroundings were not recorded')
    const higher = {
      ...here,
      surroundings: {
        ...surroundings,
        surroundings: { ...surroundings.surroundings, altitudeFeet: 7_000 },
      },
    }
    const now = evidenceOf(looked(), historyOf(openedAfter(9), [higher], []))
    const readings = now.history?.earlierReadings ?? []
    expect(readings.map(({ altitude }) => altitude)).toEqual(readings.map(() => 7_000))
    // At 820 ft a gauge shows 2.9 psi less than at 7,000 ft of the same air: 14.27 − 11.34.
    const lost = (altitude: number | null) => {
      const earlierReadings = readings.map((one) =>
        one.wheel === 'LF' ? { ...one, altitude, pressure: asReceived.LF.psi + 2.9 } : one,
      )
      return diagnose({ ...now, history: { ...now.history, earlierReadings } }).findings.map(
        ({ code }) => code,
      )
    }
    expect(lost(820)).toContain('slow-leak')
    expect(lost(null)).toContain('slow-leak')
    expect(lost(7_000)).not.toContain('slow-leak')
  })

  it('holds what we left in a tire where we set it, not what it came with', () => {
    const left = repaired().work.RR?.pressure
    expect(readingOf(historyOf(openedAfter(9), [repaired()], []), 'RR')).toMatchObject({
      pressure: left?.asLeft.value,
      temperature: left?.surroundings.tire?.value,
    })
  })

  it('says nothing of a tire whose wheel was off after it was read', () => {
    const job = repaired()
    const { RR, ...others } = job.work
    if (!RR) throw new RangeError('the right rear was not worked on')
    const unset = { ...job, work: { ...others, RR: { ...RR, pressure: null } }, closing: looked().closing }
    expect(readingOf(historyOf(openedAfter(9), [unset], []), 'RR')).toBeUndefined()
    expect(readingOf(historyOf(openedAfter(9), [unset, looked()], []), 'LF')).toBeDefined()
  })

  it('says nothing of a tire that the customer may have had moved or changed since', () => {
    const after = (event: EventEvidence) => historyOf(openedAfter(9, [event]), [looked()], [])
    expect(after({ kind: 'rotation' }).earlierReadings).toEqual([])
    expect(after({ kind: 'rotation', daysAgo: 3 }).earlierReadings).toEqual([])
    expect(after({ kind: 'rotation', daysAgo: 30 }).earlierReadings).toHaveLength(5)
    expect(after({ kind: 'rotation', happened: false }).earlierReadings).toHaveLength(5)
    const used = after({ kind: 'used-wheel', wheel: 'RF' })
    expect(readingOf(used, 'RF')).toBeUndefined()
    expect(readingOf(used, 'LF')).toBeDefined()
  })

  it('names wheels that we worked on, until the days of a comeback are over', () => {
    expect(historyOf(openedAfter(9), [looked()], []).ourWorkOn).toEqual([])
    expect(historyOf(openedAfter(comebackDays - 1), [repaired()], []).ourWorkOn).toContain('RR')
    expect(historyOf(openedAfter(comebackDays + 1), [repaired()], []).ourWorkOn).toEqual([])
  })

  it('leaves the warranty unchecked where a part of ours was fitted', () => {
    expect(historyOf(openedAfter(9), [repaired()], [])).not.toHaveProperty('partsUnderWarranty')
    expect(historyOf(openedAfter(9), [looked()], []).partsUnderWarranty).toEqual([])
  })

  it('lists IDs of other vehicles in one order, however they came', () => {
    expect(historyOf(openedAfter(9), [], ['22', '11']).idsOnOtherVehicles).toEqual(['11', '22'])
  })
})
