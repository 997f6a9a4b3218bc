import { describe, expect, it } from 'vitest'
import { similarSheets } from './similar-sheets.ts'

const sheets = ['Vantrell Linnet sedan 2019', 'Vantrell Tarn utility 2016', 'Pellowe Finch hatch 2017'].map(
  (name) => ({ sheetId: name, name }),
)
const offered = (description: string) => similarSheets(description, sheets).map(({ name }) => name)

describe('sheets that are offered for a vehicle', () => {
  it('share words with its description, the likest first', () => {
    expect(offered('2019 Vantrell Linnet')).toEqual([sheets[0]?.name, sheets[1]?.name])
    expect(offered('finch, HATCH')).toEqual([sheets[2]?.name])
  })

  it('are none where nothing is alike, or nothing is typed', () => {
    expect(offered('Dorrin Wicket 2024')).toEqual([])
    expect(offered('')).toEqual([])
  })
})
