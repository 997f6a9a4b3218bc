import { afterEach, describe, expect, it, vi } from 'vitest'
import { sessionLost } from './local-session.ts'
import { isLocked, openDoor } from './lock-store.ts'

/** The server answers whatever it is asked so, and notes the path. */
const serverThatAnswers = (status: number, body: object): string[] => {
  const asked: string[] = []
  vi.stubGlobal('fetch', async (path: string) => {
    asked.push(path)
    return new Response(JSON.stringify(body), { status })
  })
  return asked
}
const missing = { status: 401, code: 'SESSION_MISSING', title: 'Nobody is signed in', detail: 'Sign in.' }

afterEach(() => {
  vi.unstubAllGlobals()
  openDoor()
})

describe('a call that the server took for one without a session', () => {
  it('locks the tablet once the server says again that nobody is signed in, however many calls said so', async () => {
    const asked = serverThatAnswers(401, missing)
    sessionLost()
    sessionLost()
    await vi.waitFor(() => expect(isLocked()).toBe(true))
    expect(asked).toEqual(['/api/sessions/current'])
  })

  it('does not lock it where that call was older than the session', async () => {
    const asked = serverThatAnswers(200, { kind: 'bay' })
    sessionLost()
    await vi.waitFor(() => expect(asked).toHaveLength(1))
    await new Promise((resolve) => setTimeout(resolve))
    expect(isLocked()).toBe(false)
    sessionLost()
    await vi.waitFor(() => expect(asked).toHaveLength(2))
  })

  it('does not lock it where the server is out of reach by now', async () => {
    const asked = serverThatAnswers(503, missing)
    vi.stubGlobal('fetch', async (path: string) => {
      asked.push(path)
      throw new TypeError('no network')
    })
    sessionLost()
    await vi.waitFor(() => expect(asked).toHaveLength(1))
    await new Promise((resolve) => setTimeout(resolve))
    expect(isLocked()).toBe(false)
  })
})
