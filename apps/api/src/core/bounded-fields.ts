import { type FieldProblem, mostFieldProblems } from '@bayledger/contract/problem'

/** A sender may name a field as it likes. */
const longestName = 200

/**
 * The first faults of what was sent: enough to put right what a person typed. A request of a megabyte could have a hundred thousand,
 * and the answer would be many times as long as the request.
 */
export const boundedFields = (fields: readonly FieldProblem[]): FieldProblem[] =>
  fields.slice(0, mostFieldProblems).map(({ field, ...rest }) => ({
    field: field.length > longestName ? `${field.slice(0, longestName - 3)}...` : field,
    ...rest,
  }))
