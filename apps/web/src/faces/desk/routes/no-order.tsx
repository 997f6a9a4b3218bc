import { Link } from 'react-router'
import { patterns } from '../../../lib/paths.ts'
import { Sentence } from '../../../ui/sentence.tsx'

export function NoOrderRoute() {
  return (
    <>
      <title>Floor · Bayledger desk</title>
      <Sentence>
        Choose an order from the floor list, or <Link to={patterns.writeUp}>write up a complaint</Link>.
      </Sentence>
    </>
  )
}
