import { createContext } from 'react'

/** How the step on the screen is set aside; `null` outside the work. */
export const SetAsideContext = createContext<(() => void) | null>(null)
