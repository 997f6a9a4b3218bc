import type { Page } from 'playwright-core'

/** Between two keys of a scanner that is built like a keyboard, in seconds. */
const gapSeconds = 0.008

/**
 * Types like a scanner: real keys of the browser's own, each stamped eight milliseconds after the one before, however
 * busy the machine is. Line ends of the text, and its own end, are the Enter that such a scanner sends.
 */
export const scanByKeys = async (page: Page, text: string): Promise<void> => {
  const session = await page.context().newCDPSession(page)
  const begin = Date.now() / 1000
  const keys = [...`${text}\n`]
  await Promise.all(
    keys.flatMap((sign, index) => {
      const key = sign === '\n' ? { key: 'Enter', code: 'Enter', windowsVirtualKeyCode: 13 } : { key: sign }
      const timestamp = begin + index * gapSeconds
      const typed = sign === '\n' ? '\r' : sign
      return [
        session.send('Input.dispatchKeyEvent', { type: 'keyDown', text: typed, timestamp, ...key }),
        session.send('Input.dispatchKeyEvent', { type: 'keyUp', timestamp: timestamp + 0.002, ...key }),
      ]
    }),
  )
  await session.detach()
}
