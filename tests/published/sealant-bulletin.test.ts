/**
 * Source: a vehicle maker's technical service bulletin 91-02 of March 31, 1991, which passes on an advisory that rests on
 * reports to the Consumer Product Safety Commission; read online in 2026. Take every tire for one with burnable gas in
 * it; keep sparks and flames away; fill and let down the tire four times before the bead is broken; no reamer, rasp or
 * plug before the tire is off the wheel.
 */
import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import { workCautions } from '@bayledger/wording/en/work-cautions'
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { find, steps } from '../../packages/reckoning/test-support/planned.ts'
import { published } from './published.ts'
import { foundOnTire } from './tire-verdicts.ts'

const leak = [{ kind: 'find-leak', wheel: 'LF' }] as const
const sealant = { sealant: ['LF'], runLow: [] } as const
const keys = steps(leak, undefined, sealant).map(({ stepKey }) => stepKey)

/** The words of a step's cautions, in the version that the step carries. */
const cautionsOf = (stepKey: string): string =>
  find(stepKey, leak, undefined, sealant)
    .cautions.map(({ number, version }) => {
      const versions: Readonly<Record<number, string>> = workCautions[number]
      return versions[version] ?? ''
    })
    .join(' ')

published(
  {
    document: "A vehicle maker's bulletin on aerosol inflators and sealers",
    section: 'number 91-02',
    edition: '1991',
    certainty: 'read',
  },
  () => {
    it('the tire is let down and filled four times', () => {
      expect(workLimits.purgeTimes).toBe(4)
      expect(howOf(find('LF.tire.purge', leak, undefined, sealant))).toMatch(/4 times/)
    })

    it('that comes before the bead is broken, and the bead waits for it', () => {
      expect(keys.indexOf('LF.tire.purge')).toBeGreaterThanOrEqual(0)
      expect(keys.indexOf('LF.tire.purge')).toBeLessThan(keys.indexOf('LF.tire.open'))
      expect(find('LF.tire.open', leak, undefined, sealant).waitsFor).toContain('LF.tire.purge')
    })

    it.each([/no flame/, /no spark/])('the purge is done with %s', (words) => {
      expect(cautionsOf('LF.tire.purge')).toMatch(words)
    })

    it.each([
      /no flame/,
      /no spark/,
      /no plug before it is off the rim/,
      /every tire as if it held burnable gas/,
    ])('any tire is opened with %s', (words) => {
      expect(cautionsOf('LF.tire.open')).toMatch(words)
    })

    it.each([
      ['seen', { sealantSeen: true }, {}],
      ['reported', {}, { events: [{ kind: 'sealant', wheel: 'LF' }] }],
    ] as const)('sealant that was %s stops the breaking of the bead', (_, seen, rest) => {
      const found = foundOnTire(seen, {}, { ...rest, events: 'events' in rest ? [...rest.events] : [] })
      expect(found.find(({ code }) => code === 'sealant-inside')).toMatchObject({
        stop: 'do-not-open-the-tire',
        holds: ['bead-break'],
      })
    })
  },
)
