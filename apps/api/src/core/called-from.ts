/** From where a call comes, and where this service is reached on the machine itself. */
export type CalledFrom = { readonly isThisMachine: boolean; readonly addressHere: string }
