import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../../ledger/test-support/one-sensor-job.ts'
import { photo } from '../../../ledger/test-support/photo.ts'
import { wordsOf } from '../../../ledger/test-support/seeded-ids.ts'
import { technician } from '../../../ledger/test-support/shop.ts'
import { reportContext } from '../../test-support/worked-context.ts'
import type { Block } from '../content.ts'
import { mostPictures, photosSection } from './photos-section.ts'

const jpeg = { bytes: new Uint8Array([1]), width: 720, height: 540 }

/** An order with photos whose digests are made of the given names. */
const ordered = (...names: string[]) => {
  const pen = oneSensorJob('decided')
  for (const name of names)
    pen.write('photo.attached', photo({ digest: wordsOf(name), stepKey: 'RR.sensor.fit' }), {
      by: technician,
    })
  return pen.state()
}

const sectionOf = (state: ReturnType<typeof ordered>, arrived: readonly string[]) =>
  photosSection(state, {
    ...reportContext,
    photosReceived: new Set(arrived.map(wordsOf)),
    pictures: new Map(arrived.map((name) => [wordsOf(name), jpeg])),
  }).blocks

const picturesIn = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'pictures' ? block.pictures : []))

describe('the photos of a report', () => {
  it('are none, and it says so', () => {
    expect(sectionOf(ordered(), [])).toEqual([
      { kind: 'paragraph', text: 'No photo was taken on this order.', entry: null },
    ])
  })

  it('are listed with the time of capture, and "not received" while the bytes are missing', () => {
    const [table, ...rest] = sectionOf(ordered('one'), [])
    expect(rest).toEqual([])
    expect(table).toMatchObject({
      kind: 'table',
      rows: [
        {
          cells: [
            { text: 'Right rear, step Old sensor out, new one in' },
            { text: 'Jan 12, 2026, 10:00 AM' },
            { kind: 'id', text: wordsOf('one').slice(0, 16) },
            { kind: 'gap', text: 'not received' },
          ],
        },
      ],
    })
  })

  it('are shown where they have arrived, each with words in its place', () => {
    const state = ordered('one', 'two')
    const [picture, ...others] = picturesIn(sectionOf(state, ['two']))
    expect(others).toEqual([])
    expect(picture).toEqual({
      alt: 'Photo of right rear, step Old sensor out, new one in, Jan 12, 2026, 10:00 AM',
      caption: `Entry ${state.seq}: Right rear, step Old sensor out, new one in. Taken Jan 12, 2026, 10:00 AM.`,
      jpeg,
    })
  })

  it('of which there are many are all listed and not all printed', () => {
    const names = Array.from({ length: mostPictures + 2 }, (_, index) => `photo ${index}`)
    const blocks = sectionOf(ordered(...names), names)
    expect(picturesIn(blocks)).toHaveLength(mostPictures)
    expect(blocks[0]).toMatchObject({ rows: { length: mostPictures + 2 } })
    expect(blocks.at(-1)).toMatchObject({ text: expect.stringContaining('keeps all of them') })
  })
})
