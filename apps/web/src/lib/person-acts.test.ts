import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { actedLately, watchActs } from './person-acts.ts'

beforeEach(() => void vi.useFakeTimers({ toFake: ['performance'] }))
afterEach(() => void vi.useRealTimers())

it('counts a press and a key for a minute, and nothing that the page does by itself', () => {
  const page = new EventTarget()
  watchActs(page)
  page.dispatchEvent(new Event('visibilitychange'))
  expect(actedLately()).toBe(false)
  for (const act of ['pointerdown', 'touchstart', 'keydown', 'wheel']) {
    page.dispatchEvent(new Event(act))
    expect(actedLately()).toBe(true)
    vi.advanceTimersByTime(59_000)
    expect(actedLately()).toBe(true)
    vi.advanceTimersByTime(1_000)
    expect(actedLately()).toBe(false)
  }
})
