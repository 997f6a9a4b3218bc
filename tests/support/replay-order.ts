import type { AppendResult } from '@bayledger/contract/entries'
import { agreementOf, secondPersonIn, withProof } from '@bayledger/ledger/agreement'
import type { Draft } from '@bayledger/ledger/entry'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { type PersonKey, people } from '../../prisma/seeds/demo/people.ts'
import type { Caller, TestApp } from './app.ts'

/** What a device sends of a draft: the server adds who and where. */
export const envelopeOf = ({ id, orderId, kind, version, payload, writtenAt, restsOn }: Draft) => ({
  id,
  orderId,
  kind,
  version,
  payload,
  writtenAt,
  restsOn,
})

/** The same entry with the proof that its second person's PIN earns here; unchanged where it names no one. */
export const withPin = async (caller: Caller, draft: Draft): Promise<Draft> => {
  const person = Object.values(people).find(({ id }) => id === secondPersonIn(draft)?.staffId)
  if (!person) return draft
  const { body } = await caller
    .post('/api/second-person', { staffId: person.id, pin: person.pin, agreesTo: agreementOf(draft) })
    .expect(201)
  return withProof(draft, body.token)
}

export type Replay = {
  /** Sends one line as its writer, from the desk or from the tablet. */
  readonly send: (line: DemoLine) => Promise<AppendResult>
  /** Sends the lines that people wrote, in order, up to the first that `stop` names; each must be accepted. */
  readonly sendUntil: (lines: readonly DemoLine[], stop?: (line: DemoLine) => boolean) => Promise<void>
  readonly as: (person: PersonKey, where: 'desk' | 'bay') => Promise<Caller>
}

/** Plays an order of the demo day over HTTP, by the people who wrote it. What the server writes, it writes itself. */
export const replayOn = async (shop: TestApp): Promise<Replay> => {
  const callers = new Map<string, Caller>()
  const as: Replay['as'] = async (person, where) => {
    const key = `${person}/${where}`
    const known = callers.get(key)
    if (known) return known
    const caller = where === 'desk' ? await shop.desk(person) : await (await shop.tablet()).signIn(person)
    callers.set(key, caller)
    return caller
  }
  const send: Replay['send'] = async ({ draft, sides }) => {
    if (draft.writtenBy.kind !== 'staff')
      throw new Error(`${draft.kind} is written by nobody who can sign in`)
    const { staffId } = draft.writtenBy
    const person = (Object.keys(people) as PersonKey[]).find((key) => people[key].id === staffId)
    if (!person) throw new Error(`nobody has the id ${staffId}`)
    shop.clock.advance(1_000)
    const caller = await as(person, draft.deviceId === null ? 'desk' : 'bay')
    const proven = await withPin(caller, draft)
    const { body } = await caller.post('/api/entries', { entries: [envelopeOf(proven)], sides }).expect(200)
    return body.results[0]
  }
  return {
    as,
    send,
    sendUntil: async (lines, stop = () => false) => {
      for (const line of lines) {
        if (stop(line)) return
        if (line.draft.writtenBy.kind === 'system') continue
        const result = await send(line)
        if (result.result !== 'accepted')
          throw new Error(`${line.draft.kind} is not accepted: ${JSON.stringify(result)}`)
      }
    },
  }
}
