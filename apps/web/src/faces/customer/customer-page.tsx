import { isCallProblem } from '../../lib/problem.ts'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { StatusLine } from '../../ui/sentence.tsx'
import { CustomerOrderSheet } from './customer-order-sheet.tsx'
import { customerProblem } from './customer-problem.ts'
import { LanguageSwitch } from './language-switch.tsx'
import { useSpoken, useWords } from './spoken.tsx'
import { useCustomerOrder } from './use-customer-order.ts'
import './customer.css'

/** One column, read from the top: no account, no menu. */
export function CustomerPage({ secret }: { secret: string | null }) {
  return (
    <main className="customer">
      <OpenedLink key={secret} secret={secret} />
    </main>
  )
}

function NotWhole() {
  const { words, speak } = useSpoken()
  return (
    <>
      <LanguageSwitch onChoose={speak} />
      <ProblemNotice problem={words.customerPage.notWhole} />
    </>
  )
}

function OpenedLink({ secret }: { secret: string | null }) {
  const words = useWords()
  const { view, read, choose } = useCustomerOrder(secret)
  // Without a secret there is nothing to say against a link: the address has none.
  if (secret === null && view.stage === 'failed' && isCallProblem(view.problem, 'LINK_REFUSED'))
    return <NotWhole />
  if (view.stage === 'opening') return <StatusLine>{words.customerPage.opening}</StatusLine>
  return (
    <>
      <LanguageSwitch onChoose={choose} />
      {view.stage === 'failed' ? (
        <ProblemNotice problem={customerProblem(words, view.problem)} onRetry={() => void read()} />
      ) : (
        <CustomerOrderSheet order={view.order} onDecided={read} />
      )}
    </>
  )
}
