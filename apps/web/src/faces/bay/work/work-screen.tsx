import { useState } from 'react'
import { SetAsideContext } from './set-aside-context.ts'
import { SetAsideForm } from './set-aside-form.tsx'
import type { WorkFormProps } from './work-form.ts'
import { WorkStep } from './work-step.tsx'

/** The step at hand, with the way out for one that will not be done. */
export function WorkScreen(props: WorkFormProps) {
  const [setsAside, setSetsAside] = useState(false)
  if (setsAside) return <SetAsideForm {...props} onBack={() => setSetsAside(false)} />
  return (
    <SetAsideContext value={() => setSetsAside(true)}>
      <WorkStep {...props} />
    </SetAsideContext>
  )
}
