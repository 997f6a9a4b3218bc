import {
  AskedChannel,
  type AskedPurpose,
  listMessageChoices,
  type MessageChoice,
  putMessageChoice,
} from '@bayledger/contract/messages'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'

const purposes: readonly { readonly value: AskedPurpose; readonly label: string }[] = [
  { value: 'job', label: 'the vehicle that is here' },
  { value: 'retorque', label: 'the torque check' },
  { value: 'deferred', label: 'work put off' },
  { value: 'recall', label: 'a recalled part of ours' },
]
const channels = {
  email: 'May be e-mailed about',
  text: 'May be texted about',
  call: 'May be called about',
} as const

/** What the customer agrees to, by purpose and channel; each change is kept at once with who asked and when. */
export function ChoicesPart({ customerId }: { customerId: string }) {
  const client = useQueryClient()
  const queryKey = ['customer', customerId, 'choices']
  const choices = useQuery({
    queryKey,
    queryFn: ({ signal }) => call(listMessageChoices, { params: { customerId }, signal }),
    staleTime: 0,
  })
  const choose = useMutation({
    mutationFn: (body: MessageChoice) => call(putMessageChoice, { params: { customerId }, body }),
    onSettled: () => client.invalidateQueries({ queryKey }),
  })
  const allowed = choices.data?.choices.filter((choice) => choice.allowed) ?? []
  return (
    <Section title="What the customer agrees to">
      {choices.isError ? <ProblemNotice problem={problemText(choices.error)} /> : null}
      {choose.isError ? <ProblemNotice problem={problemText(choose.error)} /> : null}
      {choices.data === undefined
        ? null
        : AskedChannel.options.map((channel) => {
            const values = allowed.filter((one) => one.channel === channel).map(({ purpose }) => purpose)
            return (
              <CheckGroup
                key={channel}
                label={channels[channel]}
                options={purposes}
                values={values}
                onChange={(next) => {
                  const changed = purposes.find(
                    ({ value }) => next.includes(value) !== values.includes(value),
                  )
                  if (changed)
                    choose.mutate({
                      channel,
                      purpose: changed.value,
                      allowed: next.includes(changed.value),
                    })
                }}
              />
            )
          })}
    </Section>
  )
}
