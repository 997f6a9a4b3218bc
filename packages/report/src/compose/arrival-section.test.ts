import type { TireRecord } from '@bayledger/ledger/state'
import { describe, expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { arrivalSection } from './arrival-section.ts'

const written = workedState.arrival.tires.LF?.written
if (!written) throw new RangeError('the left front tire of the worked order was looked at')
const unseen: TireRecord = {
  valve: null,
  stem: null,
  treadDepth32nds: null,
  tireAgeYears: null,
  sensorAgeMonths: null,
  sealantSeen: null,
  tireDamage: null,
  fastenerDamage: null,
  inside: null,
}
const section = arrivalSection(
  {
    ...workedState,
    arrival: {
      ...workedState.arrival,
      tires: {
        LF: {
          ...unseen,
          sizeSeen: { readable: true, text: '235/60R18 103H' },
          dateCodeSeen: { readable: true, text: '0119' },
          written,
        },
        RF: {
          ...unseen,
          sizeSeen: { readable: true, text: '235/55R18 100H' },
          dateCodeSeen: { readable: false, why: 'on-the-inner-side' },
          tireAgeYears: 4,
          treadAcross: { inner: 7, middle: 4, outer: 7 },
          wearSeen: 'none',
          written,
        },
      },
    },
  },
  reportContext,
)
const printed = JSON.stringify(section.blocks)

describe('what the report says of the tires themselves', () => {
  it('is the size and the date code as they were read, with the age by the week of the code', () => {
    expect(printed).toContain('235/60R18 103H')
    expect(printed).toContain('0119')
    expect(printed).toContain('7 years')
  })

  it('is why nothing could be read, and an age as it was entered', () => {
    expect(printed).toContain('not readable: on the inner side')
    expect(printed).toContain('4 years')
  })

  it('is a sentence of its own where a tire is not the one of the sheet', () => {
    const sentences = section.blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []))
    expect(sentences.filter((text) => text.includes('the sheet has'))).toEqual([
      "The right front tire says 235/55R18 100H; the sheet has 235/60R18: another size. Whether it may stay was not decided here: the vehicle maker's label names the sizes that are right, and for any other the tire maker's load table decides.",
    ])
  })

  it('is what wear across a tread hints at, as a hint', () => {
    expect(printed).toContain('The right front tire has 7/32, 4/32 and 7/32 in of tread')
    expect(printed).toContain('Too much pressure often does that')
    expect(printed).not.toContain('dips')
  })
})
