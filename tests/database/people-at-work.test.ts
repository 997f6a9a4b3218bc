import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readPlacesAndJobs } from '../../apps/api/src/features/floor/store/ready-basis.ts'
import { tamberStreet } from '../../prisma/seeds/demo/places.ts'
import { startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

describe('how many people work', () => {
  const peopleNow = async () => {
    const { places } = await readPlacesAndJobs(shop.parts.pool, shop.deps.shopId, shop.clock.now())
    return places.find(({ locationId }) => locationId === tamberStreet.id)?.people
  }

  it('is who was on a tablet within two hours, locked or not, and all technicians for an hour after the first', async () => {
    const all = await peopleNow()
    expect(all).toBe(4)
    const rufus = await (await shop.tablet()).signIn('rufus')
    expect(await peopleNow()).toBe(all)
    shop.clock.advance(61 * 60_000)
    expect(await peopleNow()).toBe(1)
    await rufus.delete('/api/sessions/current').expect(204)
    const ines = await (await shop.tablet()).signIn('ines')
    expect(await peopleNow()).toBe(2)
    shop.clock.advance(119 * 60_000)
    expect(await peopleNow()).toBe(2)
    shop.clock.advance(2 * 60_000)
    expect(await peopleNow()).toBe(1)
    await ines.delete('/api/sessions/current').expect(204)
    shop.clock.advance(121 * 60_000)
    expect(await peopleNow()).toBe(all)
  })
})
