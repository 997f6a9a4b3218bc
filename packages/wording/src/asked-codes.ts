/** What a customer is asked to agree to, and by which ways; the contract's `AskedPurpose` and `AskedChannel`. */
export type AskedPurposeCode = 'job' | 'retorque' | 'deferred' | 'recall'
export type AskedChannelCode = 'email' | 'text' | 'call'
