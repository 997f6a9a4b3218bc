import type { Happening } from './action.ts'
import type { Shop } from './shop.ts'

/** More rounds than this, and something never comes home. */
const mostRounds = 400

/**
 * The end of a day: every device is in reach, everything that is under way arrives, and time passes until no tablet has
 * anything left to send. Then everybody reads everything, and all that they hold is held against a fresh fold.
 */
export const comeHome = async (shop: Shop): Promise<void> => {
  const { world, tablets, desks } = shop
  const devices = [...tablets, ...desks]
  const isFailed = () => shop.violation() !== null
  const happen = (happening: Happening) => shop.act({ ...happening, luck: 0 })
  const finish = async () => {
    for (let round = 0; round < mostRounds && !isFailed(); round += 1) {
      await happen({ does: 'go-on' })
      const isDelayed = world.network.count() > 0
      if (!isDelayed && stillOut(shop).length === 0) return
      for (const device of devices) if (device.sessionId() === '') device.wake()
      await happen({ does: 'wait', milliseconds: isDelayed ? 600_000 : 15_000 })
    }
  }
  for (const [device] of devices.entries()) await happen({ does: 'reach', device, isInReach: true })
  for (const desk of desks) desk.reload()
  for (const device of devices) device.wake()
  await finish()
  for (const orderId of world.database.orderIds().slice(-5)) {
    for (const device of devices) device.look(orderId)
    await finish()
  }
  if (isFailed()) return
  for (const entryId of stillOut(shop))
    world.accuse('lost', `${shop.witness.saysOf(entryId)} never comes home`)
  shop.compareAll()
}

/** Entries that are neither in the ledger nor in a tray, not even in that of their tablet. */
const stillOut = ({ tablets, witness }: Shop): readonly string[] =>
  witness.open().filter((id) => !tablets.some(({ disk }) => disk.find(id) === 'refused'))
