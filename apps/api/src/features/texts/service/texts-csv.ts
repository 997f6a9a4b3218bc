import type { CsvFault } from '@bayledger/contract/csv'
import { TextsContent } from '@bayledger/contract/texts'
import type { Prisma } from '@bayledger/db/generated/client'
import { applyImport } from '../../../core/csv/apply-import.ts'
import type { CsvService } from '../../../core/csv/csv-service.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { planImport } from '../../../core/csv/plan-import.ts'
import { plannedRows, presentPreview } from '../../../core/csv/present-import.ts'
import { refusedCells } from '../../../core/csv/refused-cells.ts'
import { writeCsv } from '../../../core/csv/write-csv.ts'
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
  linkMessage: null,
}

const faultsOf = (row: TextRow): readonly CsvFault[] =>
  textNames.some((name) => name === row.text.toLowerCase())
    ? refusedCells(TextsContent, textsOfRows(noTexts, [row]), {}, row).map((fault) => ({
        ...fault,
        column: 'words',
        found: row.words.slice(0, 80),
      }))
    : [{ column: 'text', found: row.text, ...registerRowWords.noSuchText(textNames) }]

const planFor = async (from: Prisma.TransactionClient, shopId: string, bytes: Uint8Array) => {
  const kept = await newest(from, shopId)
  const rows = rowsOfTexts(kept.content).map((row) => ({ row, stored: row }))
  return { kept, plan: await planImport(table, bytes, rows) }
}

const newest = async (from: Prisma.TransactionClient, shopId: string) => {
  const [found] = await listSettingVersions(from, shopId, textsKind)
  return { version: found?.version ?? 0, content: textsIn(found?.content) }
}

/** The shop's own texts, as a CSV file and back: what a file changes is one version of them. */
export const textsCsv: CsvService = {
  write: async ({ prisma, shopId }) => writeCsv(table, rowsOfTexts((await newest(prisma, shopId)).content)),
  preview: async ({ prisma, shopId }, bytes) => presentPreview((await planFor(prisma, shopId, bytes)).plan),
  apply: (deps, actor, key, { bytes, apply }) =>
    applyImport(
      deps,
      actor,
      key,
      apply,
      async (tx) => {
        await lockSetting(tx, deps.shopId, textsKind)
        return planFor(tx, deps.shopId, bytes)
      },
      async (tx, { kept, plan }) => {
        const rows = plannedRows(plan, 'changed').map(({ row }) => row)
        if (rows.length === 0) return
        const content = TextsContent.parse(textsOfRows(kept.content, rows))
        await putSettingIn(tx, deps, actor, { kind: textsKind, version: kept.version, content }, presentTexts)
      },
    ),
}
