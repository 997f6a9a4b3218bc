import { describe, expect, it } from 'vitest'
import { textCell } from './cells.ts'
import { csvPieces } from './write-csv.ts'

const columns = { name: textCell(40) }

describe('a file that is sent while it is read', () => {
  it('reads no more rows than it sends and a portion ahead, and stops when nobody takes it any longer', async () => {
    let [read, closed] = [0, false]
    async function* endless() {
      try {
        for (;;) {
          read += 1
          yield { name: `row ${read}` }
        }
      } finally {
        closed = true
      }
    }
    for await (const piece of csvPieces({ columns }, endless())) {
      expect(piece.length).toBeGreaterThan(0)
      break
    }
    expect(read).toBeLessThan(1_000)
    await expect.poll(() => closed).toBe(true)
  })

  it('breaks off with the fault that its rows have', async () => {
    async function* broken() {
      yield { name: 'one' }
      throw new RangeError('the database is gone')
    }
    const pieces: Uint8Array[] = []
    await expect(async () => {
      for await (const piece of csvPieces({ columns }, broken())) pieces.push(piece)
    }).rejects.toThrow('the database is gone')
  })
})
