import type { Author } from '@bayledger/ledger/entry'
import type { ReportContext } from './context.ts'

/** Who wrote an entry, by name. */
export const authorName = (context: ReportContext, author: Author): string => {
  switch (author.kind) {
    case 'staff':
      return context.staff[author.staffId] ?? 'staff, name not on file'
    case 'customer':
      return context.customerName ?? 'the customer'
    case 'system':
      return 'computed by Bayledger'
  }
}
