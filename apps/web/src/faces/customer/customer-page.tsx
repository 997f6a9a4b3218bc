import { customerPage } from '@bayledger/wording/en/customer-page'
import { problemText } from '../../lib/problem.ts'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { StatusLine } from '../../ui/sentence.tsx'
import { CustomerOrderSheet } from './customer-order-sheet.tsx'
import { useCustomerOrder } from './use-customer-order.ts'
import './customer.css'

/** One column, read from the top: no account, no menu. */
export function CustomerPage({ secret }: { secret: string | null }) {
  return (
    <main className="customer">
      {secret === null ? (
        <ProblemNotice problem={customerPage.notWhole} />
      ) : (
        <OpenedLink key={secret} secret={secret} />
      )}
    </main>
  )
}

function OpenedLink({ secret }: { secret: string }) {
  const [view, read] = useCustomerOrder(secret)
  if (view.stage === 'opening') return <StatusLine>{customerPage.opening}</StatusLine>
  if (view.stage === 'failed')
    return <ProblemNotice problem={problemText(view.problem)} onRetry={() => void read()} />
  return <CustomerOrderSheet order={view.order} onDecided={read} />
}
