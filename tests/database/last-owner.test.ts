import { openClient } from '@bayledger/db/client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

const owners = () => shop.parts.prisma.staff.count({ where: { active: true, roles: { has: 'owner' } } })

describe('the owner of a shop', () => {
  it('is kept by the database when two processes remove the last two at once', async () => {
    const { marguerite, rufus } = people
    await shop.parts.prisma.staff.updateMany({
      where: { id: rufus.id },
      data: { roles: ['technician', 'owner'] },
    })
    expect(await owners()).toBe(2)
    const processes = [marguerite.id, rufus.id].map((id) => ({ id, client: openClient(shop.url) }))
    const removed = await Promise.allSettled(
      processes.map(({ id, client }) => client.staff.updateMany({ where: { id }, data: { active: false } })),
    )
    expect(removed.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected'])
    expect(await owners()).toBe(1)
    for (const { client } of processes) await client.$disconnect()
  })

  it('is kept when one statement would take all of them away', async () => {
    const all = shop.parts.prisma.staff.updateMany({ data: { roles: ['advisor'] } })
    await expect(all).rejects.toThrow(/would have no owner|staff__keeps_an_owner/)
    expect(await owners()).toBe(1)
  })
})
