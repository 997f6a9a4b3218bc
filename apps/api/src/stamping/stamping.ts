import { judgeStamp, rootsOf } from '@bayledger/report/stamp/judge-stamp'
import { mostTokenBytes } from '@bayledger/report/stamp/stamp-in-file'
import { makeStampRequest, readStampReply } from '@bayledger/report/stamp/stamp-request'
import type { Config } from '../config.ts'
import type { Clock, Stamping } from '../deps.ts'
import { stampTroubleWords } from '../words/stamp-words.ts'
import { askAuthority, nodeRoots } from './ask-authority.ts'
import type { StampTrouble } from './stamp-trouble.ts'

type Place = Pick<Config, 'stampUrl' | 'stampRoots'>

/** A customer waits at the counter while a report is sealed. */
const usualPatienceMs = 5_000
/** After so many tries in a row that were waited for in vain, nobody at a counter waits for the authority any more. */
const skippedAfter = 3
/** More than this between the authority's clock and the server's, and one of them is wrong. */
const clocksAgreeMs = 5 * 60_000

/**
 * Asks the authority that the settings name. Its certificate must lead to one of `stampRoots`, or where none are set to one of the
 * roots that come with Node. `problem` hears why there is no stamp, once for each reason in a row. An authority that was silent three
 * times in a row is asked by `stamp` alone, which the keeper calls each minute, until it answers again.
 */
export const stampingBy = (
  { stampUrl, stampRoots }: Place,
  clock: Clock,
  problem: (words: string) => void,
  patienceMs = usualPatienceMs,
): Stamping => {
  const judge = judgeBy(stampRoots)
  if (stampUrl === null)
    return { host: null, stamp: async () => null, stampWhileWaited: async () => null, judge }
  const url = new URL(stampUrl)
  let said: string | null = null
  let silent = 0
  const stamp: Stamping['stamp'] = async (bytes) => {
    const answer = await stampedBy(url, bytes, { patienceMs, roots: stampRoots, judge, clock })
    const trouble = answer instanceof Uint8Array ? null : stampTroubleWords(url.host, answer)
    if (trouble !== null && trouble !== said) problem(trouble)
    said = trouble
    silent = answer instanceof Uint8Array || !isSilence(answer) ? 0 : silent + 1
    return answer instanceof Uint8Array ? answer : null
  }
  return {
    host: url.host,
    stamp,
    stampWhileWaited: async (bytes) => (silent < skippedAfter ? stamp(bytes) : null),
    judge,
  }
}

const isSilence = ({ is }: StampTrouble): boolean => is === 'late' || is === 'unreachable'

/** No authority, and none that is known. */
export const noStamping: Stamping = {
  host: null,
  stamp: async () => null,
  stampWhileWaited: async () => null,
  judge: (token, bytes) => judgeStamp(token, bytes, []),
}

/** Judges tokens by the roots of the settings, or by those of Node. */
export const judgeBy = (stampRoots: string | null): Stamping['judge'] => {
  let roots: ReturnType<typeof rootsOf> | null = null
  return (token, bytes) => {
    roots ??= rootsOf(stampRoots ?? nodeRoots)
    return judgeStamp(token, bytes, roots)
  }
}

const stampedBy = async (
  url: URL,
  bytes: Uint8Array,
  how: {
    readonly patienceMs: number
    readonly roots: string | null
    readonly judge: Stamping['judge']
    readonly clock: Clock
  },
): Promise<Uint8Array | StampTrouble> => {
  const request = makeStampRequest(bytes)
  const answered = await askAuthority(url, request.der, how)
  if (answered.is !== 'answer') return answered
  const reply = readStampReply(answered.bytes, request)
  if (reply.is !== 'token') return reply
  if (reply.token.length > mostTokenBytes) return { is: 'token-too-large' }
  const verdict = await how.judge(reply.token, bytes)
  if (verdict.is === 'bad') return { is: verdict.why }
  if (verdict.is === 'unknown-authority') return { is: 'unknown-authority' }
  const now = how.clock.now()
  return Math.abs(Date.parse(verdict.at) - now.getTime()) > clocksAgreeMs
    ? { is: 'another-time', theirs: verdict.at, ours: now.toISOString() }
    : reply.token
}
