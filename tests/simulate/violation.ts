/** What must never happen. `lost`: an entry is nowhere. `twice`: it is there more than once, or also said to be refused. */
export type Fault = 'lost' | 'twice' | 'diverged' | 'gates'

/** What the simulated shop has done and must never do. */
export type Violation = { readonly fault: Fault; readonly words: string }

/** Says that something happened that must never happen. The run ends after the step in which it is said. */
export type Accuse = (fault: Fault, words: string) => void
