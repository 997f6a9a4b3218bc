import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { ageProofs } from '../support/age-proofs.ts'
import { codeShown } from '../support/authenticator.ts'
import { giveFirstPassword } from '../support/give-first-password.ts'
import { tabTo, violationsOn } from './support/accessible.ts'
import { signInAtDesk } from './support/desk.ts'
import { setStage } from './support/stage.ts'

let serviceUrl = ''
const stage = setStage(null, async (database) => {
  serviceUrl = database.serviceUrl
})
const { signInName, password } = people.marguerite
let page: Page
let recoveryCode = ''
let ownerCode = ''
const another = 'a lantern in the attic'
const own = 'the kettle sings late'

/** A device of the browser's own that holds passkeys and knows its person (Chrome DevTools Protocol, WebAuthn). */
const addAuthenticator = async (on: Page): Promise<void> => {
  const session = await on.context().newCDPSession(on)
  await session.send('WebAuthn.enable')
  await session.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  })
}

const pressed = async (words: string): Promise<void> => {
  await tabTo(page, words)
  await page.keyboard.press('Enter')
}

beforeAll(async () => {
  page = await stage().open('desk', '/desk/sign-in')
  await signInAtDesk(page, signInName, password)
  await page.goto('/desk/own-record')
})

describe('a code at sign-in, by keyboard', () => {
  it('is turned on with what the app shows, and leaves printed codes', async () => {
    await page.getByText(/^This browser · since/).waitFor()
    await pressed('Turn it on')
    await page.getByRole('img', { name: 'The key for your authenticator app' }).waitFor()
    const key = (await page.locator('form .exact').first().textContent()) ?? ''
    await page.getByLabel('Code that the app shows').fill(codeShown(key, new Date()))
    expect(await violationsOn(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByText('They are not shown again.').waitFor()
    recoveryCode = (await page.locator('ul.exact li').first().textContent()) ?? ''
    await page.getByText(/Recovery codes left: 10/).waitFor()
    expect(await violationsOn(page)).toEqual([])
  })

  it('is asked for at the next sign-in, where a printed code does as well', async () => {
    await pressed('Sign out')
    await page.getByLabel('Sign-in name').fill(signInName)
    await page.getByLabel('Password').fill(password)
    await page.keyboard.press('Enter')
    await page.getByText('Name and password are right.').waitFor()
    await page.getByLabel(/Code of your authenticator app/).fill(recoveryCode)
    expect(await violationsOn(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
  })

  it('is turned off after the password was typed again, once the last proof is old', async () => {
    await ageProofs(serviceUrl)
    await page.goto('/desk/own-record')
    await page.getByText(/Recovery codes left: 9/).waitFor()
    await pressed('Turn it off')
    await page.getByRole('heading', { name: 'Prove again that it is you' }).waitFor()
    await page.getByRole('textbox', { name: 'Your password' }).fill(password)
    expect(await violationsOn(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByText(/^Off\. With it/).waitFor()
  })
})

describe('a passkey, by keyboard', () => {
  it('is made on the device under a name', async () => {
    await addAuthenticator(page)
    await page.getByLabel(/^What you call it/).fill('This laptop')
    await page.keyboard.press('Enter')
    await page.getByText(/^This laptop · at localhost · added/).waitFor()
    expect(await violationsOn(page)).toEqual([])
  })

  it('signs in without name, password and code', async () => {
    await pressed('Sign out')
    await page.getByLabel('Sign-in name').waitFor()
    await pressed('Sign in with a passkey')
    await page.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
  })

  it('proves again that it is its person, once the last proof is old', async () => {
    await ageProofs(serviceUrl)
    await page.goto('/desk/own-record')
    await page.getByText(/^This laptop .* used/).waitFor()
    await pressed('Remove it')
    await page.getByRole('button', { name: 'Use a passkey instead' }).waitFor()
    expect(await violationsOn(page)).toEqual([])
    await pressed('Use a passkey instead')
    await page.getByText('None.', { exact: true }).waitFor()
  })
})

describe('an owner’s printed code, by keyboard', () => {
  it('is made under the owner’s name and printed alone', async () => {
    await pressed('Make a printed code')
    await page.getByText('It is not shown again').waitFor()
    ownerCode = (await page.locator('.print-sheet .exact').nth(1).textContent()) ?? ''
    expect(ownerCode).toMatch(/^(\w{4}-){6}\w{4}$/)
    await page.emulateMedia({ media: 'print' })
    expect(await page.getByRole('button', { name: 'Print it' }).isVisible()).toBe(false)
    expect(await page.getByText(ownerCode).isVisible()).toBe(true)
    await page.emulateMedia({ media: null })
    expect(await violationsOn(page)).toEqual([])
  })

  it('sets a new password at the sign-in page', async () => {
    await pressed('Sign out')
    await page.getByLabel('Sign-in name').fill(signInName)
    await pressed('I lost my password and have a printed code')
    await page.getByLabel('Printed code').fill(ownerCode)
    await page.getByLabel('New password', { exact: true }).fill(another)
    await page.getByLabel('New password again').fill(another)
    expect(await violationsOn(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByText('The new password is set.').waitFor()
    await page.getByLabel('Password').fill(another)
    await page.keyboard.press('Enter')
    await page.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
  })
})

describe('a password that somebody else gave, by keyboard', () => {
  it('opens the desk once its person has chosen their own', async () => {
    await giveFirstPassword(serviceUrl, signInName)
    await pressed('Sign out')
    await page.getByLabel('Sign-in name').fill(signInName)
    await page.getByLabel('Password').fill(another)
    await page.keyboard.press('Enter')
    await page.getByText('This password was given to you.').waitFor()
    await page.getByLabel('New password', { exact: true }).fill(own)
    await page.getByLabel('New password again').fill(own)
    expect(await violationsOn(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
  })
})

describe('a second step that the shop asks everybody for, by keyboard', () => {
  it('is turned on by an owner, and by whoever has none at the next sign-in', async () => {
    await page.goto('/desk/shop/security')
    await page.getByRole('radio', { name: /^yes: a code or a passkey/ }).press('Space')
    await pressed('Save')
    await page.getByText(/^Saved/).waitFor()
    expect(await violationsOn(page)).toEqual([])
    await pressed('Sign out')
    await page.getByLabel('Sign-in name').fill(signInName)
    await page.getByLabel('Password').fill(own)
    await page.keyboard.press('Enter')
    await page.getByText('Your shop asks everybody for a second step').waitFor()
    await pressed('Go on to the desk')
    await page.getByText('Neither is on yet.').waitFor()
    await pressed('Turn it on')
    await page.getByRole('img', { name: 'The key for your authenticator app' }).waitFor()
    const key = (await page.locator('form .exact').first().textContent()) ?? ''
    await page.getByLabel('Code that the app shows').fill(codeShown(key, new Date()))
    expect(await violationsOn(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByText('They are not shown again.').waitFor()
    await pressed('Go on to the desk')
    await page.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
  })
})

describe('the owner', () => {
  it('finds both among what happened, with who did it', async () => {
    await page.goto('/desk/shop/security')
    for (const words of [
      `${people.marguerite.name} turned the code at sign-in on.`,
      `${people.marguerite.name} typed the password again`,
      `${people.marguerite.name} used a recovery code`,
      `${people.marguerite.name} signed in with a passkey`,
      `${people.marguerite.name} used a passkey again`,
      `${people.marguerite.name} removed a passkey`,
      `${people.marguerite.name} set a new password with the printed code`,
    ])
      await page.getByText(words).first().waitFor()
    expect(await violationsOn(page)).toEqual([])
  })
})
