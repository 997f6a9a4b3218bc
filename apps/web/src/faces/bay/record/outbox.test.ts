import { describe, expect, it } from 'vitest'
import { CallProblem } from '../../../lib/problem.ts'
import { makeOutbox, type Parcel } from './outbox.ts'

const parcel = (says: string, staffId = 'ines', restore: () => void = () => undefined): Parcel => ({
  orderId: 'order',
  entries: [
    {
      id: says,
      orderId: 'order',
      kind: 'step.closed',
      version: 1,
      payload: { stepKey: says, value: null },
      writtenAt: '2026-01-12T16:40:00.000Z',
      restsOn: [],
    },
  ],
  sides: [],
  says,
  staffId,
  deviceId: null,
  restore,
})

const problem = (status: number) =>
  new CallProblem({ status, code: status === 0 ? 'UNREACHABLE' : 'ENTRY_REFUSED', title: 'No.', detail: '' })

/** A server that answers when it is told to, a person who is signed in, and a clock that is set by hand. */
const bench = () => {
  const ledger: string[] = []
  const retries: (() => void)[] = []
  const waiting: { says: string; answer: (thrown: CallProblem | null) => Promise<void> }[] = []
  let person = 'ines'
  const outbox = makeOutbox({
    send: ({ says }) =>
      new Promise((resolve, reject) => {
        waiting.push({
          says,
          answer: async (thrown) => {
            waiting.shift()
            if (thrown) reject(thrown)
            else {
              ledger.push(says)
              resolve()
            }
            await settled()
          },
        })
      }),
    isRead: (_orderId, entryId) => ledger.includes(entryId),
    signedIn: () => person,
    retryAfter: (_milliseconds, retry) => retries.push(retry),
  })
  return {
    outbox,
    ledger,
    onItsWay: () => waiting.map(({ says }) => says),
    answer: (thrown: CallProblem | null = null) => waiting[0]?.answer(thrown),
    retry: async () => {
      retries.shift()?.()
      await settled()
    },
    signIn: (staffId: string) => {
      person = staffId
      outbox.wake()
    },
    shown: () => outbox.content().onTop.map(({ says }) => says),
  }
}

/** Every promise that can go on has gone on. */
const settled = () => new Promise((resolve) => setTimeout(resolve))

describe('the outbox of a tablet', () => {
  it('shows at once what was posted, and sends it in order, one after the other', async () => {
    const { outbox, shown, onItsWay, answer, ledger } = bench()
    for (const wheel of ['LF', 'RF', 'RR']) outbox.post(parcel(wheel))
    expect(shown()).toEqual(['LF', 'RF', 'RR'])
    expect(onItsWay()).toEqual(['LF'])
    await answer()
    expect(onItsWay()).toEqual(['RF'])
    await answer()
    await answer()
    expect(ledger).toEqual(['LF', 'RF', 'RR'])
    expect(shown()).toEqual([])
  })

  it('keeps what is out of reach, says how much it is, and sends the same again', async () => {
    const { outbox, shown, answer, retry, ledger } = bench()
    outbox.post(parcel('LF'))
    outbox.post(parcel('RF'))
    await answer(problem(0))
    expect(shown()).toEqual(['LF', 'RF'])
    expect(outbox.content().stuck).toBe(1)
    await retry()
    await answer()
    await answer()
    expect(ledger).toEqual(['LF', 'RF'])
    expect(outbox.content().stuck).toBe(0)
  })

  it('takes a refused entry back, fills its form in again, keeps the reason, and goes on', async () => {
    const { outbox, shown, answer, ledger } = bench()
    const restored: string[] = []
    outbox.post(parcel('LF', 'ines', () => void restored.push('LF')))
    outbox.post(parcel('RF'))
    await answer(problem(422))
    await answer()
    expect(ledger).toEqual(['RF'])
    expect(shown()).toEqual([])
    expect(restored).toEqual(['LF'])
    const [refused] = outbox.content().refused
    expect(refused?.parcel.says).toBe('LF')
    if (refused) outbox.dismiss(refused)
    expect(outbox.content().refused).toEqual([])
  })

  it('sends nothing under another person’s session', async () => {
    const { outbox, answer, onItsWay, signIn, ledger } = bench()
    outbox.post(parcel('LF', 'ines'))
    outbox.post(parcel('RF', 'ines'))
    signIn('greta')
    await answer()
    expect(onItsWay()).toEqual([])
    expect(outbox.content().stuck).toBe(1)
    outbox.post(parcel('RR', 'greta'))
    await answer()
    expect(ledger).toEqual(['LF', 'RR'])
    signIn('ines')
    await settled()
    await answer()
    expect(ledger).toEqual(['LF', 'RR', 'RF'])
  })

  it('sends a seal after everything before it, shows it only when it is taken, and gives it up out of reach', async () => {
    const { outbox, shown, answer, ledger } = bench()
    outbox.post(parcel('LF'))
    const seal = outbox.sendAndWait(parcel('seal'))
    expect(shown()).toEqual(['LF'])
    await answer()
    await answer()
    expect(await seal).toBeNull()
    expect(ledger).toEqual(['LF', 'seal'])

    const second = outbox.sendAndWait(parcel('second seal'))
    await answer(problem(0))
    expect(await second).toBeInstanceOf(CallProblem)
    expect(shown()).toEqual([])
  })

  it('is drained when nothing is on its way', async () => {
    const { outbox, answer } = bench()
    outbox.post(parcel('LF'))
    let isDrained = false
    void outbox.drained().then(() => {
      isDrained = true
    })
    await settled()
    expect(isDrained).toBe(false)
    await answer()
    expect(isDrained).toBe(true)
  })
})
