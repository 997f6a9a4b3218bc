import { type CustomerOrder, getCustomerOrder, openLink } from '@bayledger/contract/customer-face'
import { useCallback, useEffect, useState } from 'react'
import { call } from '../../lib/api-client.ts'
import { isCallProblem } from '../../lib/problem.ts'

export type CustomerView =
  | { readonly stage: 'opening' }
  | { readonly stage: 'open'; readonly order: CustomerOrder }
  | { readonly stage: 'failed'; readonly problem: unknown }

/**
 * Opens the link once, then reads the order. The secret is swapped for a short session at once, so that no later
 * request carries it.
 */
export const useCustomerOrder = (secret: string): [CustomerView, () => Promise<void>] => {
  const [view, setView] = useState<CustomerView>({ stage: 'opening' })
  const read = useCallback(async () => {
    try {
      setView({ stage: 'open', order: await readOrOpen(secret) })
    } catch (problem) {
      setView({ stage: 'failed', problem })
    }
  }, [secret])
  useEffect(() => {
    void read()
  }, [read])
  return [view, read]
}

const readOrOpen = async (secret: string): Promise<CustomerOrder> => {
  try {
    await call(openLink, { body: { secret } })
  } catch (problem) {
    // A page that was open before may go on with the session it has; a link that was withdrawn may not.
    if (!isCallProblem(problem, 'TOO_MANY_REQUESTS')) throw problem
  }
  return call(getCustomerOrder, {})
}
