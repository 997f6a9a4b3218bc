import type { Page } from 'playwright-core'
import type { TestBrowser } from '../../support/browser.ts'
import { button, enroll, ines, shows, signIn } from './bay.ts'
import { enrollmentCode, signInAtDesk, writeUp } from './desk.ts'
import { customer, plate } from './silent-right-rear.ts'
import { tap } from './touch.ts'

/** A desk screen at which the advisor has signed in. */
export const openDesk = async (browser: TestBrowser): Promise<Page> => {
  const desk = await browser.open('desk', '/desk/sign-in')
  await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  return desk
}

/** A new tablet in the bay, enrolled with this code of the desk, on which Ines has signed in. */
export const openBay = async (browser: TestBrowser, code: string): Promise<Page> => {
  const bay = await browser.open('bay', '/bay/enroll')
  await enroll(bay, code)
  await signIn(bay, ines)
  return bay
}

/** The vehicle with the silent right rear sensor is written up and taken; the tablet shows its first arrival task. */
export const takeForArrival = async (
  browser: TestBrowser,
): Promise<{ readonly desk: Page; readonly bay: Page }> => {
  const desk = await openDesk(browser)
  const code = await enrollmentCode(desk)
  await writeUp(desk, { customer, plate, words: 'It flashes, then it stays on.' })
  const bay = await openBay(browser, code)
  await tap(button(bay, `Take it: ${plate}`))
  await shows(bay, 'Note the temperatures')
  return { desk, bay }
}
