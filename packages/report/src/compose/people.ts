import type { Author } from '@bayledger/ledger/entry'
import { english } from '@bayledger/wording/en/english'
import type { ReportContext } from './context.ts'

const { authors } = english.report.cells

/** Who wrote an entry, by name. */
export const authorName = (context: ReportContext, author: Author): string => {
  switch (author.kind) {
    case 'staff':
      return context.staff[author.staffId] ?? authors.staff
    case 'customer':
      return context.customerName ?? authors.customer
    case 'system':
      return authors.system
  }
}
