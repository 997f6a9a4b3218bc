import type { Customer } from '@bayledger/contract/customers'
import { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'
import type { CustomerRow } from './store.ts'

/** The customer without telephone and e-mail, for readers who may have neither. */
export const withoutContact = ({ phone: _phone, email: _email, ...rest }: Customer): Customer => rest

export const presentCustomer = (row: CustomerRow): Customer => ({
  customerId: row.id,
  version: row.version,
  name: row.name,
  phone: row.phone,
  email: row.email,
  mayText: row.mayText,
  mayEmail: row.mayEmail,
  mayCall: row.mayCall,
  // The database holds no other language.
  language: CustomerLanguageCode.parse(row.language),
})
