import { TabletCode } from '../tablet-code.tsx'

/** For everyone at the desk: a code for one tablet. An owner finds all tablets on the shop's own pages. */
export function TabletsRoute() {
  return (
    <>
      <title>Tablets · Bayledger desk</title>
      <h1>Add a tablet</h1>
      <TabletCode />
    </>
  )
}
