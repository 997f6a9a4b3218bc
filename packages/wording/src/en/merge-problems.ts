import type { ProblemsWording, ProblemValues } from '../problems.ts'

type Values = ProblemValues['MERGE_REFUSED']

const refused = ({ why, what }: Values): string => {
  switch (why) {
    case 'same-record':
      return `Both are the same record. Choose the other record of this ${what}.`
    case 'newer-merge':
      return `This ${what} was merged again later. Undo the later merge first.`
    case 'undone-before':
      return 'Somebody undid this merge before you. Load the page again to see both records.'
  }
}

/** What can go wrong where two records of one customer or one vehicle are made one. */
export const mergeProblems: Pick<ProblemsWording, 'RECORD_MERGED' | 'MERGE_REFUSED' | 'MERGE_NOT_FOUND'> = {
  RECORD_MERGED: {
    title: 'This record was merged into another one',
    detail: ({ what, into }) =>
      `Somebody made this ${what} one with ${into} in the meantime. Nothing of yours was saved. Load the page again, it shows ${into}, and do it there.`,
  },
  MERGE_REFUSED: { title: 'This cannot be merged or undone so', detail: refused },
  MERGE_NOT_FOUND: {
    title: 'There is no such merge',
    detail: () => 'Load the page again; its history shows what was merged.',
  },
}
