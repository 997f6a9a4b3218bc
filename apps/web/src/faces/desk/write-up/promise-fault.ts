import { writeUpFaults } from '../../../lib/fault-words.ts'

/** What is wrong with a promise as it is typed: a half-typed day is `''`, and a time that has passed is none to promise. */
export const promiseFault = (time: string, day: string | null, isPast = false): string | undefined => {
  if (time !== '' && day === '') return writeUpFaults.promiseDay
  return isPast ? writeUpFaults.promisePast : undefined
}
