import {
  type CustomerOrder,
  getCustomerOrder,
  openLink,
  putCustomerLanguage,
} from '@bayledger/contract/customer-face'
import { useCallback, useEffect, useState } from 'react'
import { call } from '../../lib/api-client.ts'
import { linkSecretFrom } from '../../lib/paths.ts'
import { isCallProblem } from '../../lib/problem.ts'
import { type LanguageCode, useSpoken } from './spoken.tsx'

export type CustomerView =
  | { readonly stage: 'opening' }
  | { readonly stage: 'open'; readonly order: CustomerOrder }
  | { readonly stage: 'failed'; readonly problem: unknown }

type CustomerOrderView = {
  readonly view: CustomerView
  readonly read: () => Promise<void>
  /** Puts the page into a language; an open order keeps it on the customer's card. */
  readonly choose: (language: LanguageCode) => Promise<void>
}

/**
 * Opens the link, then reads the order. The secret is swapped for a short session at once and leaves the address, so that no later
 * request carries it and nobody reads it from the screen or the browser's history. `null`: the page was loaded again without it, and
 * goes on with the session that it has.
 */
export const useCustomerOrder = (secret: string | null): CustomerOrderView => {
  const { speak } = useSpoken()
  const [view, setView] = useState<CustomerView>({ stage: 'opening' })
  const read = useCallback(async () => {
    try {
      const order = await readOrOpen(secret)
      await speak(order.language)
      setView({ stage: 'open', order })
    } catch (problem) {
      setView({ stage: 'failed', problem })
    }
  }, [secret, speak])
  useEffect(() => {
    void read()
  }, [read])
  const choose = async (language: LanguageCode) => {
    if (view.stage !== 'open') return speak(language)
    try {
      await call(putCustomerLanguage, { body: { language } })
      await read()
    } catch (problem) {
      setView({ stage: 'failed', problem })
    }
  }
  return { view, read, choose }
}

const readOrOpen = async (secret: string | null): Promise<CustomerOrder> => {
  if (secret === null) return call(getCustomerOrder, {})
  try {
    await call(openLink, { body: { secret } })
    if (linkSecretFrom(location.hash) === secret) history.replaceState(null, '', location.pathname)
  } catch (problem) {
    // A page that was open before may go on with the session it has; a link that was withdrawn may not.
    if (!isCallProblem(problem, 'TOO_MANY_REQUESTS')) throw problem
  }
  return call(getCustomerOrder, {})
}
