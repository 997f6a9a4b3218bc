import type { CsvProgress } from '@bayledger/contract/csv'
import { describe, expect, it } from 'vitest'
import { AppError } from '../app-error.ts'
import { centsCell, choiceCell, dayCell, maybe, numberCell, textCell, yesNoCell } from './cells.ts'
import type { CsvTable, RowOf } from './csv-table.ts'
import { planImport, type StoredRow } from './plan-import.ts'
import { importCounts, plannedRows, presentPreview, refuseUnlessShown } from './present-import.ts'
import { writeCsv } from './write-csv.ts'

const columns = {
  name: textCell(40),
  weight: numberCell({ from: 0.1, to: 500, unit: 'lb' }),
  price: centsCell({ fromCents: 0, toCents: 1_000_000 }),
  size: choiceCell(['small', 'large']),
  kept: yesNoCell(),
  due: maybe(dayCell()),
}
type Row = RowOf<typeof columns>
const table: CsvTable<Row> = { columns, key: ['name'] }

const row = (name: string, change: Partial<Row> = {}): Row => ({
  name,
  weight: 12.5,
  price: 1250,
  size: 'small',
  kept: true,
  due: null,
  ...change,
})
const stored = (...rows: Row[]): StoredRow<Row, number>[] =>
  rows.map((one, index) => ({ row: one, stored: index }))
const bytes = (text: string) => new TextEncoder().encode(text)
const header = 'name,weight,price,size,kept,due'
const plan = (text: string | Uint8Array, ...rows: Row[]) =>
  planImport(table, typeof text === 'string' ? bytes(text) : text, stored(...rows))
const unreadable = async (text: string | Uint8Array) => {
  const problem = await plan(text).catch((thrown: unknown) => thrown)
  return problem instanceof AppError ? problem.said : problem
}

describe('a CSV file', () => {
  it('comes back as the same after an export, with line breaks, quotation marks, commas and letters of any alphabet', async () => {
    const rows = [
      row('Plain'),
      row('Comma, "quoted" and\nbroken', { due: '2026-01-12', price: 5, weight: 0.1 }),
      row('Größe Ω 尺寸 🛞', { kept: false, size: 'large' }),
    ]
    const file = await writeCsv(table, rows)
    expect([...file.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf])
    expect(new TextDecoder().decode(file)).toContain('\r\n')
    const { rows: planned } = await plan(file, ...rows)
    expect(planned.map(({ what }) => what)).toEqual(['same', 'same', 'same'])
  })

  it('of which the first line is longer than any of ours is refused by its beginning, whatever is in it', async () => {
    for (const sign of ['J', ',', '"']) {
      const said = await unreadable(sign.repeat(300_000))
      expect(said).toMatchObject({ code: 'CSV_UNREADABLE', why: 'columns', unknown: [sign.repeat(40)] })
    }
    expect(await unreadable(`${header}\r${'x'.repeat(300_000)}`)).not.toMatchObject({ why: 'columns' })
  })

  it('has no cell that a spreadsheet program runs, and gives every text back (OWASP, CSV Injection)', async () => {
    const names = ['=1+1', '+1', '-cmd', '@SUM(A1)', "'=1", "'plain", '＝1', '-3.1', '\u2212 minus']
    const rows = names.map((name) => row(name))
    const file = await writeCsv(table, rows)
    const firstCells = new TextDecoder().decode(file).split('\r\n').slice(1, -1)
    for (const cell of firstCells) expect(cell).toMatch(/^"?(?![=@＝]|[+-](?!\d+(\.\d+)?,))/)
    const { rows: planned } = await plan(file, ...rows)
    expect(planned.map(({ what }) => what)).toEqual(names.map(() => 'same'))
  })

  it.each([
    ['semicolons', `${header.replaceAll(',', ';')}\nNut;1;2.50;small;yes;`],
    ['tabs', `${header.replaceAll(',', '\t')}\nNut\t1\t2.50\tsmall\tyes\t`],
    ['a byte-order mark and CRLF', `\uFEFF${header}\r\nNut,1,2.50,small,yes,\r\n`],
    ['carriage returns alone', `${header}\rNut,1,2.50,small,yes,\r`],
    ['columns in another order and case', `Due,KEPT,size,price,weight,name\n,Yes,SMALL,2.50,1,Nut`],
    ['empty lines', `${header}\n\n,,,,,\nNut,1,2.50,small,yes,\n\n`],
  ])('is read with %s', async (_, text) => {
    const { rows } = await plan(text)
    expect(rows).toEqual([
      expect.objectContaining({
        what: 'added',
        row: { name: 'Nut', weight: 1, price: 250, size: 'small', kept: true, due: null },
      }),
    ])
  })

  it.each<[string, string | Uint8Array, unknown]>([
    ['nothing in it', '', { why: 'empty' }],
    [
      'an encoding of one byte a letter',
      Uint8Array.of(...bytes(`${header}\nGr`), 0xf6, 0xdf),
      { why: 'not-utf-8', line: 2 },
    ],
    ['UTF-16', Uint8Array.of(0xff, 0xfe, 0x6e, 0), { why: 'utf-16' }],
    [
      'a quotation mark that is never closed',
      `${header}\n"Nut,1,2.50,small,yes,\n`,
      { why: 'quotation-marks', row: 2 },
    ],
    [
      'other columns',
      'name,weight,price,size,kept,kept,hue',
      { why: 'columns', missing: ['due'], unknown: ['hue'], twice: ['kept'] },
    ],
    [
      'too many rows',
      `${header}\n${'Nut,1,2.50,small,yes,\n'.repeat(20_001)}`,
      { why: 'too-many-rows', most: 20_000 },
    ],
  ])('is refused as a whole with %s', async (_, text, said) => {
    expect(await unreadable(text)).toEqual({ code: 'CSV_UNREADABLE', ...(said as object) })
  })
})

describe('what an import would do', () => {
  it('says row by row what is added, changed, the same and refused, as a spreadsheet counts', async () => {
    const text = [
      header,
      'New,1,2.50,small,yes,',
      'Old,99,12.50,large,yes,',
      'Kept,12.5,12.50,small,yes,',
      'Wrong,"1,5",-1.00,middle,maybe,12 January',
      'Short,1,2.50',
      'New,2,2.50,small,yes,',
    ].join('\n')
    const preview = presentPreview(await plan(text, row('Old'), row('Kept'), row('Not named')))
    expect(preview.counts).toEqual({ added: 1, changed: 1, same: 1, refused: 3 })
    expect(preview.added).toEqual([{ row: 2, name: 'New' }])
    expect(preview.changed).toEqual([
      {
        row: 3,
        name: 'Old',
        fields: [
          { column: 'weight', before: '12.5', after: '99' },
          { column: 'size', before: 'small', after: 'large' },
        ],
      },
    ])
    expect(preview.refused.map(({ row: number }) => number)).toEqual([5, 6, 7])
    const [wrong, short, twice] = preview.refused
    expect(wrong?.faults.map(({ column, found }) => [column, found])).toEqual([
      ['weight', '1,5'],
      ['price', '-1.00'],
      ['size', 'middle'],
      ['kept', 'maybe'],
      ['due', '12 January'],
    ])
    for (const fault of wrong?.faults ?? []) expect(fault.do).toMatch(/import the file again/)
    expect(short?.faults[0]?.reason).toBe('The row has 3 cells and the header 6.')
    expect(twice?.faults[0]?.reason).toBe('Row 2 is about the same record.')
  })

  it('is bound by its digest to the file and to what is stored', async () => {
    const text = `${header}\nOld,99,12.50,small,yes,\nBad,,,,,`
    const shown = await plan(text, row('Old'))
    const other = await plan(text, row('Old', { weight: 50 }))
    const { digest } = shown
    expect(digest).toMatch(/^[0-9a-f]{64}$/)
    expect(await plan(text, row('Old')).then((again) => again.digest)).toBe(digest)
    expect(() => refuseUnlessShown(other, { digest, refused: 'leave-out' })).toThrow('CSV_PREVIEW_STALE')
    expect(() => refuseUnlessShown(shown, { digest, refused: 'stop' })).toThrow('CSV_ROWS_REFUSED')
    expect(() => refuseUnlessShown(shown, { digest, refused: 'leave-out' })).not.toThrow()
  })

  it('of 10,000 rows of which 300 are wrong refuses these 300, and lets other work have its turn and says how far it is meanwhile', async () => {
    const lines = Array.from({ length: 10_000 }, (_, index) =>
      index % 33 === 0 && index < 9_900
        ? `Part ${index},heavy,2.50,small,yes,`
        : `Part ${index},1,2.50,small,yes,`,
    )
    let turns = 0
    let done = false
    const takeTurn = () => {
      turns += 1
      if (!done) setImmediate(takeTurn)
    }
    setImmediate(takeTurn)
    const told: CsvProgress[] = []
    const file = bytes(`${header}\n${lines.join('\n')}`)
    const planned = await planImport(table, file, stored(), (progress) => told.push(progress))
    done = true
    expect(told.slice(0, 2)).toEqual([
      { step: 'comparing', done: 1, of: 10_000 },
      { step: 'comparing', done: 51, of: 10_000 },
    ])
    expect(told.at(-1)?.done).toBe(9_951)
    expect(importCounts(planned)).toEqual({ added: 9_700, changed: 0, same: 0, refused: 300 })
    expect(plannedRows(planned, 'refused').map(({ number }) => number)).toEqual(
      Array.from({ length: 300 }, (_, index) => index * 33 + 2),
    )
    expect(turns).toBeGreaterThan(100)
  })
})
