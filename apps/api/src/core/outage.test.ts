import { expect, it } from 'vitest'
import { watchOutage } from './outage.ts'

it('an outage is said once when it begins and once when it is over, with how long it was', () => {
  const said: string[] = []
  let now = 0
  const outage = watchOutage(
    {
      begun: (error) => said.push(`begun: ${error}`),
      over: (seconds) => said.push(`over after ${seconds} s`),
    },
    () => now,
  )
  outage.works()
  for (const error of ['refused', 'refused', 'timed out']) {
    outage.failed(error)
    now += 2_000
  }
  outage.works()
  outage.works()
  outage.failed('lost')
  outage.works()
  expect(said).toEqual(['begun: refused', 'over after 6 s', 'begun: lost', 'over after 0 s'])
})
