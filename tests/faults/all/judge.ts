import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { faultLine } from '../../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../../apps/api/src/proof/verify-database.ts'
import type { Load } from './load.ts'

/** What became of what was acknowledged. All but the first are to be 0. */
export type Judged = {
  readonly acknowledged: number
  readonly lost: number
  readonly twice: number
  /** Chains, projections, sides, reports and digests that do not hold. */
  readonly broken: number
  readonly wrongAnswers: number
  readonly messagesLost: number
  readonly messagesDoubled: number
  /** Of everything that is not 0, what it was. */
  readonly lines: readonly string[]
}

export const nothingJudged: Judged = {
  ...{ acknowledged: 0, lost: 0, twice: 0, broken: 0, wrongAnswers: 0, messagesLost: 0, messagesDoubled: 0 },
  lines: [],
}

export const sumOf = (one: Judged, other: Judged): Judged => ({
  acknowledged: one.acknowledged + other.acknowledged,
  lost: one.lost + other.lost,
  twice: one.twice + other.twice,
  broken: one.broken + other.broken,
  wrongAnswers: one.wrongAnswers + other.wrongAnswers,
  messagesLost: one.messagesLost + other.messagesLost,
  messagesDoubled: one.messagesDoubled + other.messagesDoubled,
  lines: [...one.lines, ...other.lines],
})

export const isClean = ({
  lost,
  twice,
  broken,
  wrongAnswers,
  messagesLost,
  messagesDoubled,
}: Judged): boolean => lost + twice + broken + wrongAnswers + messagesLost + messagesDoubled === 0

/** Looks up every acknowledged entry, and verifies the whole record as `ledger:verify` does. */
export const judgeEntries = async (
  serviceUrl: string,
  dataFolder: string,
  { acknowledged, wrong }: Pick<Load, 'acknowledged' | 'wrong'>,
): Promise<Judged> => {
  const pool = openPool({ url: serviceUrl, size: 1, onIdleError: () => undefined })
  try {
    const { rows } = await pool.query<{ id: string; times: number }>(
      'select id, count(*)::int as times from entries group by id',
    )
    const times = new Map(rows.map((row) => [row.id, row.times]))
    const lost = [...acknowledged].filter((id) => !times.has(id))
    const twice = rows.filter((row) => row.times > 1)
    const places = { dataFolder, digestFolder: join(dataFolder, 'digests') }
    const { faults } = await verifyDatabase(pool, places, () => undefined)
    return {
      ...nothingJudged,
      acknowledged: acknowledged.size,
      lost: lost.length,
      twice: twice.length,
      broken: faults.length,
      wrongAnswers: wrong.length,
      lines: [
        ...lost.map((id) => `acknowledged and not there: ${id}`),
        ...twice.map(({ id }) => `there twice: ${id}`),
        ...faults.map(faultLine),
        ...grouped(wrong),
      ],
    }
  } finally {
    await pool.end()
  }
}

/** The same words once, with how often they were said: the ids in them aside. */
const grouped = (lines: readonly string[]): string[] => {
  const words = lines.map((line) => line.replaceAll(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '…'))
  return [...Map.groupBy(words, (line) => line)].map(([line, { length }]) => `${length} times: ${line}`)
}
