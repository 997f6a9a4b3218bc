import { controls } from '@bayledger/wording/en/controls'
import { createContext } from 'react'

/** What controls say by themselves. A page in another language than the staff's gives its own. */
export const ControlsWords = createContext(controls)
