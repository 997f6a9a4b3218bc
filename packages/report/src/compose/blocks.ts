import type { TableWording } from '@bayledger/wording/report/table'
import { columnsOf } from '../columns.ts'
import type { Block, Row } from '../content.ts'

export const paragraph = (text: string, entry: number | null = null): Block => ({
  kind: 'paragraph',
  text,
  entry,
})

/** `shares`: each column's part of the width, in the order of a row's cells. */
export const table = <Name extends string>(
  { caption, columns }: TableWording<Name>,
  shares: Readonly<Record<Name, number>>,
  rows: readonly Row[],
): Block => ({ kind: 'table', caption, columns: columnsOf(columns, shares), rows })
