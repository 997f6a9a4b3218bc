import { english } from '@bayledger/wording/en/english'
import { expect, it } from 'vitest'
import { workedState } from '../../test-support/worked-state.ts'
import type { ReportContext } from './context.ts'
import { peopleSection } from './people-section.ts'

const context = {
  language: english,
  composedAt: '2026-01-12T20:00:00.000Z',
  timeZone: 'America/New_York',
  staff: {},
  texts: {},
} as unknown as ReportContext
const mark = {
  entryId: '019bb314-2300-7029-a788-698440cfdc39',
  seq: 41,
  by: { kind: 'system' },
  kind: 'drive.done',
  struck: null,
} as const

const tablesOf = (receivedAt: string) =>
  peopleSection(
    {
      ...workedState,
      marks: [{ ...mark, deviceId: null, writtenAt: '2026-01-12T15:00:00.000Z', receivedAt }] as never,
    },
    context,
  ).blocks.flatMap((block) => (block.kind === 'table' ? [block] : []))

it('prints both times of an entry of any kind where device and server differ by more than two minutes', () => {
  const table = tablesOf('2026-01-12T14:13:00.000Z').at(-1)
  expect(table?.caption).toMatch(/showed another time/)
  expect(table?.rows).toMatchObject([
    {
      entry: 41,
      cells: [
        { text: '41, drive done' },
        { text: 'Jan 12, 2026, 10:00 AM' },
        { text: 'Jan 12, 2026, 9:13 AM' },
      ],
    },
  ])
})

it('prints no such table where they agree', () => {
  expect(tablesOf('2026-01-12T15:02:00.000Z').map(({ caption }) => caption)).toEqual(['Who recorded what'])
})
