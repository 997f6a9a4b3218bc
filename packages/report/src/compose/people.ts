import type { Author } from '@bayledger/ledger/entry'
import type { ReportContext } from './context.ts'
import type { Spoken } from './spoken.ts'

const authors = ({ language }: Spoken) => language.report.cells.authors

/** Who wrote an entry, by name. */
export const authorName = (context: ReportContext, author: Author): string => {
  switch (author.kind) {
    case 'staff':
      return context.staff[author.staffId] ?? authors(context).staff
    case 'customer':
      return context.customerName ?? authors(context).customer
    case 'system':
      return authors(context).system
  }
}
