import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { oneSensorJob, stages } from '../test-support/one-sensor-job.ts'
import { orderPen } from '../test-support/order-pen.ts'
import { commands, tryCommand } from '../test-support/random-order.ts'
import { colleague, otherTablet, technician } from '../test-support/shop.ts'
import type { Entry } from './entry.ts'
import { advance, type Folded, fold } from './fold.ts'

/** Advances entry by entry and compares with the fold of the same entries at each of them. */
const expectAdvancedAsFolded = (entries: readonly Entry[]): void => {
  let folded: Folded | null = null
  for (const [index, entry] of entries.entries()) {
    folded = advance(folded, entry)
    expect(folded.state).toEqual(fold(entries.slice(0, index + 1)))
  }
}

describe('a kept order that is advanced by one entry', () => {
  it('is what all its entries fold to, at every stage of a job', () => {
    for (const stage of stages) expectAdvancedAsFolded(oneSensorJob(stage).entries())
  }, 120_000)

  const job = oneSensorJob('handed-back', 'advanced').entries()

  it('is what all its entries fold to, whatever people try', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: job.length }), commands, (begun, tries) => {
        const pen = orderPen('advanced', job.slice(0, begun))
        for (const command of tries) tryCommand(pen, command)
        const after = pen.entries()
        let folded = after.slice(0, begun).reduce<Folded | null>(advance, null)
        for (let end = begun + 1; end <= after.length; end += 1) {
          const entry = after[end - 1]
          if (entry) folded = advance(folded, entry)
          expect(folded?.state).toEqual(fold(after.slice(0, end)))
        }
      }),
      { seed: 20_260_112, numRuns: 40 },
    )
  }, 120_000)

  it('is the same for the frozen ledgers of every version', () => {
    const folder = `${import.meta.dirname}/frozen`
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.json')))
      expectAdvancedAsFolded(JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as Entry[])
  }, 60_000)

  it('keeps what it was advanced from, so that two entries may be tried on one order', () => {
    const pen = oneSensorJob('written-up', 'tried twice')
    const kept = pen.entries().reduce<Folded | null>(advance, null)
    const before = structuredClone(kept?.state)
    const note = { words: 'a'.repeat(64) }
    const one = pen.draft('note.added', note, { by: technician })
    const other = pen.draft('note.added', note, { by: colleague, deviceId: otherTablet })
    const sent = (draft: typeof one) => ({
      ...draft,
      seq: pen.entries().length + 1,
      given: {},
      receivedAt: null,
      hash: null,
    })
    const withOne = advance(kept, sent(one))
    const withOther = advance(kept, sent(other))
    expect(withOne.state).toEqual(fold([...pen.entries(), sent(one)]))
    expect(withOther.state).toEqual(fold([...pen.entries(), sent(other)]))
    expect(kept?.state).toEqual(before)
  })
})
