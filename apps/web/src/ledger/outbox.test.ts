import { describe, expect, it } from 'vitest'
import type { Delivery } from './delivery.ts'
import { makeOutbox } from './outbox.ts'
import type { Parcel, ParcelStore, RefusalText } from './parcel.ts'

const parcel = (says: string, { staffId = 'ines', orderId = 'order' } = {}): Parcel => ({
  orderId,
  entries: [
    {
      id: says,
      orderId,
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
  heardSeq: 0,
  form: { key: `${orderId}/${says}`, content: says },
})

const strikeOf = (id: string): Parcel => {
  const strike = parcel(`undo ${id}`)
  return {
    ...strike,
    entries: strike.entries.map((entry) => ({ ...entry, kind: 'entry.struck', restsOn: [id] })),
    form: null,
  }
}

/** What survives a reboot: a disk that a test may fill up. */
const disk = () => {
  const rows = new Map<number, { parcel: Parcel; refused: RefusalText | null }>()
  let last = 0
  let isFull = false
  const store: ParcelStore = {
    load: async () => {
      const all = [...rows].map(([number, row]) => ({ number, ...row }))
      return {
        waiting: all.filter(({ refused }) => refused === null),
        refused: all.flatMap(({ refused, ...row }) => (refused ? [{ ...row, problem: refused }] : [])),
      }
    },
    keep: async (kept) => {
      if (isFull) throw new Error('full')
      last += 1
      rows.set(last, { parcel: kept, refused: null })
      return last
    },
    statusOf: async (number) => {
      const row = rows.get(number)
      return row === undefined ? 'gone' : row.refused === null ? 'waiting' : 'refused'
    },
    refuse: async (number, refused) => {
      const row = rows.get(number)
      if (row) rows.set(number, { ...row, refused })
    },
    drop: async (numbers) => {
      for (const number of numbers) rows.delete(number)
    },
  }
  return {
    store,
    waiting: () => [...rows.values()].filter(({ refused }) => refused === null).map((row) => row.parcel.says),
    fill: () => {
      isFull = true
    },
  }
}

const taken: Delivery = { became: 'taken' }
const refused: Delivery = { became: 'refused', problem: 'No.' }
const notYet: Delivery = { became: 'not-yet', problem: 'Later.' }
const outOfReach: Delivery = { became: 'out-of-reach', problem: 'No answer.' }

/** A server that answers when it is told to, a person who is signed in, and a clock that is set by hand. */
const bench = async (kept = disk()) => {
  const ledger: string[] = []
  const retries: (() => void)[] = []
  const refilled: unknown[] = []
  const waited: [string, boolean][] = []
  const waiting: { says: string; answer: (became: readonly Delivery[]) => void }[] = []
  let person = 'ines'
  const outbox = makeOutbox({
    store: kept.store,
    send: (sent, hasWaited) =>
      new Promise((resolve) => {
        const says = sent.map((one) => one.says).join(' + ')
        waited.push([says, hasWaited])
        waiting.push({
          says,
          answer: (told) => {
            const became = told.length === 0 ? sent.map(() => taken) : told
            for (const [index, one] of sent.entries())
              if (became[index]?.became === 'taken') ledger.push(one.says)
            resolve(became)
          },
        })
      }),
    isRead: (_orderId, entryId) => ledger.includes(entryId),
    maySend: ({ staffId }) => staffId === person,
    retryAfter: (_milliseconds, retry) => retries.push(retry),
    alone: (work) => work(),
    refill: ({ content }) => void refilled.push(content),
    textOf: (problem) => ({ title: String(problem), detail: '' }),
    notKept: (cause) => `Not kept: ${String(cause)}`,
  })
  await settled()
  return {
    outbox,
    ledger,
    refilled,
    waited,
    retries,
    disk: kept,
    post: async (...posted: Parcel[]) => {
      const answers = posted.map(outbox.post)
      await settled()
      return Promise.all(answers)
    },
    onItsWay: () => waiting.map(({ says }) => says),
    /** What became of each parcel of the delivery that is on its way; nothing: all were taken. */
    answer: async (...became: readonly Delivery[]) => {
      waiting.shift()?.answer(became)
      await settled()
    },
    retry: async () => {
      retries.shift()?.()
      await settled()
    },
    signIn: async (staffId: string) => {
      person = staffId
      outbox.wake()
      await settled()
    },
    shown: () => outbox.content().onTop.map(({ says }) => says),
  }
}

/** Every promise that can go on has gone on. */
const settled = () => new Promise((resolve) => setTimeout(resolve))

describe('the outbox of a tablet', () => {
  it('shows at once what was posted, and sends it in order; what waits meanwhile goes together', async () => {
    const { outbox, shown, onItsWay, answer, ledger } = await bench()
    void outbox.post(parcel('LF'))
    await settled()
    for (const wheel of ['RF', 'RR']) void outbox.post(parcel(wheel))
    expect(shown()).toEqual(['LF', 'RF', 'RR'])
    await settled()
    expect(onItsWay()).toEqual(['LF'])
    await answer()
    expect(onItsWay()).toEqual(['RF + RR'])
    await answer()
    expect(ledger).toEqual(['LF', 'RF', 'RR'])
    expect(shown()).toEqual([])
  })

  it('sends together only what one person wrote to one order, one after the other', async () => {
    const { outbox, onItsWay, answer, ledger } = await bench()
    const written = [
      parcel('LF'),
      parcel('RF'),
      parcel('other', { orderId: 'second' }),
      parcel('RR'),
      { ...parcel('LR'), heardSeq: 4 },
    ]
    for (const one of written) void outbox.post(one)
    await settled()
    for (const expected of ['LF + RF', 'other', 'RR', 'LR']) {
      expect(onItsWay()).toEqual([expected])
      await answer()
    }
    expect(ledger).toEqual(['LF', 'RF', 'other', 'RR', 'LR'])
  })

  it('brings home what was written alone for hours in deliveries that the server takes', async () => {
    const { outbox, waited, answer, ledger } = await bench()
    const written = Array.from({ length: 120 }, (_, index) => `reading ${index}`)
    for (const says of written) void outbox.post(parcel(says))
    await settled()
    for (let sent = 0; sent < 3; sent += 1) await answer()
    expect(ledger).toEqual(written)
    expect(waited.map(([says]) => says.split(' + ').length)).toEqual([50, 50, 20])
  })

  it('settles each parcel of a delivery for itself, and sends again those that nothing was said of', async () => {
    const { outbox, post, answer, onItsWay, ledger, disk } = await bench()
    await post(parcel('LF'), parcel('RF'), parcel('RR'), parcel('LR'))
    await answer(taken, refused, taken)
    expect(ledger).toEqual(['LF', 'RR'])
    expect(outbox.content().refused.map((one) => one.parcel.says)).toEqual(['RF'])
    expect(onItsWay()).toEqual(['LR'])
    await answer()
    expect(disk.waiting()).toEqual([])
  })

  it('sends nothing before it is kept, and forgets nothing before the server has answered', async () => {
    const { post, onItsWay, answer, disk } = await bench()
    expect(await post(parcel('LF'))).toEqual([true])
    expect(disk.waiting()).toEqual(['LF'])
    expect(onItsWay()).toEqual(['LF'])
    await answer()
    expect(disk.waiting()).toEqual([])
  })

  it('goes on after a reboot with what it kept, in the order of writing', async () => {
    const before = await bench()
    await before.post(parcel('LF'), parcel('RF'))
    const after = await bench(before.disk)
    expect(after.shown()).toEqual(['LF', 'RF'])
    await after.post(parcel('RR'))
    await after.answer()
    await after.answer()
    expect(after.ledger).toEqual(['LF', 'RF', 'RR'])
    expect(after.disk.waiting()).toEqual([])
  })

  it('says so where the tablet cannot keep it, fills the form in again and sends nothing', async () => {
    const { post, onItsWay, shown, outbox, refilled, disk } = await bench()
    disk.fill()
    expect(await post(parcel('LF'))).toEqual([false])
    expect(shown()).toEqual([])
    expect(onItsWay()).toEqual([])
    expect(refilled).toEqual(['LF'])
    expect(outbox.content().refused.map(({ problem }) => problem.title)).toEqual(['Not kept: Error: full'])
  })

  it('keeps what is out of reach, says how much it is, and sends the same again', async () => {
    const { outbox, post, shown, answer, retry, retries, ledger } = await bench()
    await post(parcel('LF'), parcel('RF'))
    await answer(outOfReach, outOfReach)
    expect(shown()).toEqual(['LF', 'RF'])
    expect(outbox.content().stuck).toBe(2)
    await post(parcel('RR'))
    await answer(outOfReach, outOfReach, outOfReach)
    expect(retries.length).toBe(1)
    await retry()
    await answer()
    expect(ledger).toEqual(['LF', 'RF', 'RR'])
    expect(outbox.content().stuck).toBe(0)
  })

  it('keeps what the server does not take yet, and sends what belongs to other orders', async () => {
    const { post, answer, ledger, onItsWay, outbox, disk } = await bench()
    await post(parcel('LF'), parcel('RF'), parcel('other', { orderId: 'second' }))
    await answer(notYet, notYet)
    expect(onItsWay()).toEqual(['other'])
    await answer()
    expect(ledger).toEqual(['other'])
    expect(disk.waiting()).toEqual(['LF', 'RF'])
    expect(outbox.content().refused).toEqual([])
    outbox.wake()
    await settled()
    await answer()
    expect(ledger).toEqual(['other', 'LF', 'RF'])
  })

  it('takes a refused entry back, fills its form in again, keeps the reason through a reboot, and goes on', async () => {
    const { outbox, post, shown, answer, ledger, refilled, disk } = await bench()
    await post(parcel('LF'), parcel('RF'))
    await answer(refused, taken)
    expect(ledger).toEqual(['RF'])
    expect(shown()).toEqual([])
    expect(refilled).toEqual(['LF'])
    expect(outbox.content().refused.map((one) => one.parcel.says)).toEqual(['LF'])
    const later = await bench(disk)
    const [kept] = later.outbox.content().refused
    expect(kept?.problem.title).toBe('No.')
    if (kept) later.outbox.dismiss(kept)
    await settled()
    expect((await bench(disk)).outbox.content().refused).toEqual([])
  })

  it('sends nothing that may not go out now, as under another person’s session', async () => {
    const { outbox, post, answer, onItsWay, signIn, ledger } = await bench()
    await post(parcel('LF'))
    await post(parcel('RF'))
    await signIn('greta')
    await answer()
    expect(onItsWay()).toEqual([])
    expect(outbox.content().stuck).toBe(1)
    await post(parcel('RR', { staffId: 'greta' }))
    await answer()
    expect(ledger).toEqual(['LF', 'RR'])
    await signIn('ines')
    await answer()
    expect(ledger).toEqual(['LF', 'RR', 'RF'])
  })

  it('says of each parcel whether it waited: tried before, or kept through a reboot', async () => {
    const first = await bench()
    await first.post(parcel('LF'))
    await first.answer(outOfReach)
    await first.retry()
    expect(first.waited).toEqual([
      ['LF', false],
      ['LF', true],
    ])
    const second = await bench(first.disk)
    expect(second.waited).toEqual([['LF', true]])
  })

  it('counts what is not sent yet, whether it was tried or not', async () => {
    const { outbox, post, answer } = await bench()
    await post(parcel('LF'))
    await post(parcel('RF'))
    expect(outbox.content().unsent).toBe(2)
    await answer()
    expect(outbox.content().unsent).toBe(1)
  })

  it('knows of nothing that it is all sent before it has read what the tablet keeps, or where it cannot', async () => {
    const kept = disk()
    await kept.store.keep(parcel('LF'))
    let read: () => void = () => undefined
    const isRead = new Promise<void>((resolve) => {
      read = resolve
    })
    const load = () => isRead.then(() => kept.store.load())
    const { outbox } = await bench({ ...kept, store: { ...kept.store, load } })
    expect(outbox.content().unsent).toBeNull()
    read()
    await settled()
    expect(outbox.content().unsent).toBe(1)

    const broken = () => Promise.reject(new Error('broken'))
    const other = await bench({ ...kept, store: { ...kept.store, load: broken } })
    expect(other.outbox.content().unsent).toBeNull()
    await other.post(parcel('RF'))
    expect(other.outbox.content().unsent).toBe(1)
  })

  it('says nothing of a withdrawal of what was refused: there is nothing left to take back', async () => {
    const { outbox, post, answer, disk } = await bench()
    await post(parcel('LF'), strikeOf('LF'))
    await answer(refused, refused)
    expect(outbox.content().refused.map((one) => one.parcel.says)).toEqual(['LF'])
    expect(disk.waiting()).toEqual([])
  })

  it('does not send again what another page of this tablet has sent', async () => {
    const first = await bench()
    await first.post(parcel('LF'))
    await first.post(parcel('RF'))
    const second = await bench(first.disk)
    await second.answer()
    expect(second.ledger).toEqual(['LF', 'RF'])
    await first.answer()
    expect(first.onItsWay()).toEqual([])
  })

  it('is drained when nothing is on its way', async () => {
    const { outbox, post, answer } = await bench()
    await post(parcel('LF'))
    let isDrained = false
    void outbox.drained().then(() => {
      isDrained = true
    })
    await settled()
    expect(isDrained).toBe(false)
    await answer()
    expect(isDrained).toBe(true)
  })

  it('lets the page go when everything posted is kept, and not while more comes', async () => {
    const { outbox, post } = await bench()
    await post(parcel('LF'))
    expect(await outbox.allKept()).toBe(true)
    const asked = outbox.allKept()
    void outbox.post(parcel('RF'))
    expect(await asked).toBe(false)
    expect(await outbox.allKept()).toBe(true)
  })
})
