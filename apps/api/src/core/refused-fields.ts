import type { FieldProblem } from '@bayledger/contract/problem'
import { AppError } from './app-error.ts'
import { boundedFields } from './bounded-fields.ts'

/** Fields that are wrong in a way that no schema can say: a code that is taken, a place that is not the shop's. */
export const refuseFields = (wrong: FieldProblem[]): void => {
  if (wrong.length === 0) return
  const fields = boundedFields(wrong)
  const names = fields.map(({ field }) => field)
  throw new AppError({ code: 'FIELDS_INVALID', what: 'fields', fields: names }, { fields })
}

/** Asks about values that may be right and are likely not, unless the writer said that they are. @throws VALUE_DOUBTFUL */
export const askAbout = (doubts: readonly FieldProblem[], sure: readonly string[] = []): void => {
  const fields = boundedFields(doubts.filter(({ field }) => !sure.includes(field)))
  if (fields.length === 0) return
  throw new AppError({ code: 'VALUE_DOUBTFUL', fields: fields.map(({ field }) => field) }, { fields })
}
