import type { ControlsWording } from '@bayledger/wording/controls'
import { controls } from '@bayledger/wording/en/controls'
import { createContext } from 'react'

/** What controls say by themselves. A page in another language than the staff's gives its own. */
export const ControlsWords = createContext<ControlsWording>(controls)
