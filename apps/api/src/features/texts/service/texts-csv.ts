import type { CsvFault } from '@bayledger/contract/csv'
import { TextsContent } from '@bayledger/contract/texts'
import type { Prisma } from '@bayledger/db/generated/client'
import { ownMessagesIn } from '@bayledger/ledger/message-template'
import { usualWarranty } from '@bayledger/reckoning/money/warranty'
import type { CsvService } from '../../../core/csv/csv-service.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { listCsv } from '../../../core/csv/list-csv.ts'
import { plannedRows } from '../../../core/csv/present-import.ts'
import { refusedCells } from '../../../core/csv/refused-cells.ts'
import { listSettingVersions, lockSetting, putSettingIn } from '../../../core/setting-versions.ts'
import { registerRowWords } from '../../../words/csv-words.ts'
import { textsKind } from '../policy.ts'
import { presentTexts, textsIn } from '../present.ts'
import { rowsOfTexts, type TextRow, textColumns, textNames, textsOfRows } from './text-rows.ts'

/** Each text is held against the schema alone, so that a fault is of its own row. */
const table: CsvTable<TextRow> = {
  columns: textColumns,
  key: ['text'],
  check: (row) => faultsOf(row),
}

const noTexts: TextsContent = {
  lines: [],
  telephone: null,
  reportFooter: null,
  cautions: null,
  messages: ownMessagesIn(null),
  quietHours: null,
  warranty: usualWarranty,
}

const faultsOf = (row: TextRow): readonly CsvFault[] =>
  textNames.some((name) => name === row.text.toLowerCase())
    ? refusedCells(TextsContent, textsOfRows(noTexts, [row]), {}, row).map((fault) => ({
        ...fault,
        column: 'words',
        found: row.words.slice(0, 80),
      }))
    : [{ column: 'text', found: row.text, ...registerRowWords.noSuchText(textNames) }]

const newest = async (from: Prisma.TransactionClient, shopId: string) => {
  const [found] = await listSettingVersions(from, shopId, textsKind)
  return { version: found?.version ?? 0, content: textsIn(found?.content) }
}

/** The shop's own texts, as a CSV file and back: what a file changes is one version of them. */
export const textsCsv: CsvService = listCsv({
  list: async (from, { shopId }) => {
    const kept = await newest(from, shopId)
    return { kept, table, rows: rowsOfTexts(kept.content).map((row) => ({ row, stored: row })) }
  },
  lock: (tx, shopId) => lockSetting(tx, shopId, textsKind),
  put: async (tx, of, { plan, list: { kept }, actor, wrote }) => {
    const rows = plannedRows(plan, 'changed').map(({ row }) => row)
    if (rows.length === 0) return
    const content = TextsContent.parse(textsOfRows(kept.content, rows))
    await putSettingIn(tx, of, actor, { kind: textsKind, version: kept.version, content }, presentTexts)
    wrote(rows.length)
  },
})
