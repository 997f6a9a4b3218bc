import type { Page } from 'playwright-core'
import type { TestDatabase } from '../../support/database.ts'
import { writeOrderInFlight } from '../../support/order-in-flight.ts'
import { button, enroll, ines, shows, signIn } from './bay.ts'
import { signInAtDesk } from './desk.ts'
import { plate } from './silent-right-rear.ts'
import type { Stage } from './stage.ts'
import { tap } from './touch.ts'

/** A desk screen at which the advisor has signed in. */
export const openDesk = async (stage: Stage): Promise<Page> => {
  const desk = await stage.open('desk', '/desk/sign-in')
  await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  return desk
}

/** A new tablet in the bay, enrolled, on which Ines has signed in. */
export const openBay = async (stage: Stage): Promise<Page> => {
  const bay = await stage.open('bay', '/bay/enroll')
  await enroll(bay, await stage.desk.enrollmentCode())
  await signIn(bay, ines)
  return bay
}

/**
 * For a stage to begin with: a vehicle is written up, the one with the silent right rear sensor where no other is named.
 * Gives the order's id.
 */
export const writeArrival = ({ serviceUrl }: TestDatabase, of = plate): Promise<string> =>
  writeOrderInFlight(
    serviceUrl,
    { number: 'T-2603', plate: of },
    ({ draft }) => draft.kind === 'order.assigned',
  )

/** Takes that vehicle; the tablet shows its first arrival task. */
export const takeForArrival = async (bay: Page, of = plate): Promise<void> => {
  await tap(button(bay, `Take it: ${of}`))
  await shows(bay, 'Note the temperatures')
}
