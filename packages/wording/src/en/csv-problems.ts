import type { ProblemsWording, ProblemValues } from '../problems.ts'

type CsvCode = 'CSV_UNREADABLE' | 'CSV_PREVIEW_STALE' | 'CSV_ROWS_REFUSED'

const listed = (said: string, names: readonly string[]): string[] =>
  names.length === 0 ? [] : [`${said}: ${names.map((name) => `“${name.slice(0, 60)}”`).join(', ')}.`]

const unreadable = (values: ProblemValues['CSV_UNREADABLE']): string => {
  switch (values.why) {
    case 'empty':
      return 'The file is empty. Export one from here, change it and import it again.'
    case 'utf-16':
      return 'The file is written in UTF-16. Save it as “CSV UTF-8” in your spreadsheet program and import it again.'
    case 'not-utf-8':
      return `Line ${values.line} is not written in UTF-8, so that some letters would come out wrong. Save the file as “CSV UTF-8” in your spreadsheet program and import it again.`
    case 'quotation-marks':
      return `A quotation mark near row ${values.row} has no partner or is inside a text. Put the whole text in quotation marks and write each one inside it twice.`
    case 'too-many-rows':
      return `The file has more than ${values.most} rows. Cut it in parts and import one after the other.`
    case 'columns':
      return [
        ...listed('These columns are missing', values.missing),
        ...listed('These are not ours', values.unknown),
        ...listed('These are there twice', values.twice),
        'Export a file from here and keep its first line as it is.',
      ].join(' ')
  }
}

/** What is wrong with a CSV file as a whole. */
export const csvProblems: Pick<ProblemsWording, CsvCode> = {
  CSV_UNREADABLE: { title: 'The file cannot be read as our CSV', detail: unreadable },
  CSV_PREVIEW_STALE: {
    title: 'What would change is no longer what was shown',
    detail: () =>
      'The file or what is stored here changed since the preview. Nothing was changed. Look at the preview again, then apply it.',
  },
  CSV_ROWS_REFUSED: {
    title: 'Some rows are refused, and nothing was changed',
    detail: ({ count }) =>
      `${count === 1 ? 'One row is' : `${count} rows are`} refused. Correct them in the file, or import the others without them.`,
  },
}
