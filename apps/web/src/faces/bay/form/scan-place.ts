import { type ScanTarget, scanFor } from '../../../features/scanning/scan-target.ts'
import { alreadyScanned, noPlaceWords } from '../../../features/scanning/scan-words.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { isAnswered, type Row } from './rows.ts'

type Form = { readonly rows: readonly Row[]; readonly values: RowValues; readonly active: string }
type ScanRow = Extract<Row, { kind: 'text' }> & { readonly scan: ScanTarget }

/**
 * The row that a scan goes into: the current one where it fits, else the first that fits and has no answer. What is
 * answered is never written over unseen.
 */
export const scanPlace = (form: Form, text: string): { readonly row: Row; readonly value: string } | null => {
  for (const row of inOrder(form)) {
    const taken = scanFor(row.scan, text)
    if (taken.ok && (row.key === form.active || !isAnswered(row, form.values[row.key])))
      return { row, value: taken.value }
  }
  return null
}

/** Why no row of a form takes a scan. */
export const noPlaceIn = (form: Form, text: string): string => {
  const [first, ...others] = inOrder(form)
  if (first === undefined) return noPlaceWords(text)
  const full = [first, ...others].find((row) => scanFor(row.scan, text).ok)
  if (full) return alreadyScanned(full.label)
  const taken = scanFor(first.scan, text)
  return taken.ok ? '' : taken.says
}

const inOrder = ({ rows, active }: Form): ScanRow[] => {
  const scanned = rows.filter((row): row is ScanRow => row.kind === 'text' && row.scan !== undefined)
  return [...scanned.filter(({ key }) => key === active), ...scanned.filter(({ key }) => key !== active)]
}
