import type { Customer } from '@bayledger/contract/customers'
import { english } from '@bayledger/wording/en/english'
import type { CustomerLanguage } from '@bayledger/wording/language'
import { useQuery } from '@tanstack/react-query'

const load = async (code: Customer['language']): Promise<CustomerLanguage> => {
  if (code === 'en') return english
  const { spanish } = await import('@bayledger/wording/es/spanish')
  return spanish
}

/** The words in which a customer is served; `null` until they are loaded. */
export const useCustomerLanguage = (code: Customer['language']): CustomerLanguage | null => {
  const { data } = useQuery({
    queryKey: ['customer-language', code],
    queryFn: () => load(code),
    staleTime: Number.POSITIVE_INFINITY,
    ...(code === 'en' ? { initialData: english } : {}),
  })
  return data ?? null
}
