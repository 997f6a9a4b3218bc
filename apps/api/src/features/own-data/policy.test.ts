import { describe, expect, it } from 'vitest'
import { filesOf } from './policy.ts'

const order = (number: string, reports: readonly string[], photos: readonly string[]) => ({
  orderId: `id of ${number}`,
  number,
  reports,
  photos,
})

describe('the files of a copy', () => {
  it('are the reports by their numbers and the photos numbered within their order, each photo once', () => {
    const files = filesOf([order('T-1', ['T-1-R1', 'T-1-R2'], ['a', 'b', 'a']), order('T-2', [], ['c'])])
    expect(files.map(({ path }) => path)).toEqual([
      ...['reports/T-1-R1.pdf', 'reports/T-1-R2.pdf', 'photos/T-1-1.jpg', 'photos/T-1-2.jpg'],
      'photos/T-2-1.jpg',
    ])
    expect(files.at(-1)).toEqual({
      path: 'photos/T-2-1.jpg',
      orderId: 'id of T-2',
      of: { kind: 'photo', digest: 'c' },
    })
  })

  it('end where there are too many, and then photos are left out before any report', () => {
    const files = filesOf([order('T-1', ['T-1-R1'], ['a', 'b']), order('T-2', ['T-2-R1'], ['c'])], 3)
    expect(files.map(({ path }) => path)).toEqual([
      'reports/T-1-R1.pdf',
      'reports/T-2-R1.pdf',
      'photos/T-1-1.jpg',
    ])
  })
})
