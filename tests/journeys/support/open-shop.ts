import { cornerTire } from '../../support/first-shop.ts'
import type { Person } from './bay.ts'
import type { OwnerHand } from './owner-hand.ts'

/** What the owner of an empty database does, page by page, whichever way they work. */
const heading = ({ page }: OwnerHand, name: string | RegExp) => page.getByRole('heading', { name })

export const pell: Person = { name: 'Pell Orrin', pin: '730164' }

/** Fills in the page that opens by itself, all but the PIN the second time. */
export const fillFirstPage = async (hand: OwnerHand, pin: string): Promise<void> => {
  await heading(hand, 'Make your shop').waitFor()
  const { shopName, placeName, altitudeFeet, owner } = cornerTire
  await hand.type('Name of the shop', shopName)
  await hand.type('Name of the place', placeName)
  await hand.type('Altitude', String(altitudeFeet))
  await hand.type('Your name', owner.name)
  await hand.type('Sign-in name', owner.signInName)
  await hand.type('Password', owner.password)
  await hand.type('Password again', owner.password)
  await hand.type('PIN', pin)
  await hand.type('PIN again', pin)
  await hand.press('Make the shop')
}

/** Adds a technician, who gets a PIN; the shop's own pages are open. */
export const addTechnician = async (hand: OwnerHand, { name, pin }: Person): Promise<void> => {
  await hand.press('Add people and set their PINs')
  await hand.press('Add a person')
  await hand.type('Name', name)
  await hand.type('Sign-in name', name.split(' ')[0]?.toLowerCase() ?? '')
  await hand.press('technician')
  await hand.press('Add a person')
  await heading(hand, name).waitFor()
  await hand.page.getByText(/^Added\. They cannot sign in yet/).waitFor()
  await hand.type('New PIN', pin)
  await hand.type('New PIN again', pin)
  await hand.page.keyboard.press('Enter')
  await hand.page.getByText('The PIN is set.').waitFor()
}

/** Adds a wrench and a gauge, the codes of which other journeys use too. */
export const addInstruments = async (hand: OwnerHand): Promise<void> => {
  await hand.press('Wrenches and gauges')
  await hand.press('Add a wrench or gauge')
  await hand.press('torque wrench')
  await hand.type('Code', 'W-07')
  await hand.type('Scale begins at', '20')
  await hand.type('Scale ends at', '150')
  await hand.press('lbf·ft')
  await hand.day('Due on', '2099-12-31')
  await hand.press('Add a wrench or gauge')
  await heading(hand, 'W-07, torque wrench').waitFor()
  await hand.press('All wrenches and gauges')
  await hand.press('Add a wrench or gauge')
  await hand.press('tire gauge')
  await hand.type('Code', 'GA-1')
  await hand.type('Shows against the master gauge', '0.5')
  await hand.press('Add a wrench or gauge')
  await heading(hand, 'GA-1, tire gauge').waitFor()
}

/** Looks through the prices that came with the program and makes them the shop's own. */
export const savePrices = async (hand: OwnerHand): Promise<void> => {
  await hand.press('Prices')
  await hand.type('Labor for an hour', '135.00')
  await hand.page.keyboard.press('Enter')
  await hand.page.getByText('Saved. This is version 2.').waitFor()
}
