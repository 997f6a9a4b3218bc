import { lazy } from 'react'

/** Few visits take a tire off its wheel: what asks for the balance is loaded then. */
export const BalanceForm = lazy(async () => {
  const { BalanceForm } = await import('./balance-form.tsx')
  return { default: BalanceForm }
})
