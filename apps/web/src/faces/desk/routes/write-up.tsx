export function WriteUpRoute() {
  return (
    <>
      <title>Write-up · Bayledger desk</title>
      <h1>Write-up</h1>
    </>
  )
}
