import {
  confusionTable,
  judgeSet,
  vehicleSets,
} from '@bayledger/reckoning/diagnosis/physics/confusion.test-support'

/** Both confusion tables as docs/testing.md shows them. */
export const confusionTables = (): string =>
  vehicleSets.map((set) => confusionTable(set, judgeSet(set)).join('\n')).join('\n\n')

const [start, end] = ['<!-- tables of npm run check:vehicles -->', '<!-- end of the tables -->']

/** The text of the page with the tables in their place. */
export const insertTables = (page: string, tables: string): string => {
  const [before, rest] = page.split(start)
  const after = rest?.split(end)[1]
  if (before === undefined || after === undefined)
    throw new Error('docs/testing.md has no place for the tables')
  return `${before}${start}\n\n${tables}\n\n${end}${after}`
}
