import { expect, it } from 'vitest'
import { retentionContent, retentionRows, retentionValues } from './retention-rows.ts'

const content = {
  ...{ customerYears: 7, reportYears: 3, draftDays: 30, messageDays: 90 },
  ...{ openingDays: 365, browserDays: 180, refusedDays: 365 },
}

it('Times come back from the rows as they went in, also where a customer is never erased by itself', () => {
  expect(retentionContent(retentionValues(content))).toEqual(content)
  const never = { ...content, customerYears: null }
  expect(retentionContent(retentionValues(never))).toEqual(never)
})

it('Every time has a row', () => {
  expect(retentionRows.map(({ key }) => key).toSorted()).toEqual(Object.keys(content).toSorted())
})
