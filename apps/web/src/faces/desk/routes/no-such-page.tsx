import { ProblemNotice } from '../../../ui/problem-notice.tsx'

export function NoSuchPageRoute() {
  return (
    <>
      <title>No such page · Bayledger desk</title>
      <ProblemNotice
        problem={{
          title: 'There is no such page.',
          detail: 'Check the address, choose an order from the floor list, or find one by its number.',
        }}
      />
    </>
  )
}
