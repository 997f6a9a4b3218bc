export function EnrollRoute() {
  return (
    <main className="bay-step">
      <title>Enroll this tablet · Bayledger bay</title>
      <h1>Enroll this tablet</h1>
    </main>
  )
}
