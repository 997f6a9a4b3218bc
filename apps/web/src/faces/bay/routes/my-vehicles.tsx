export function MyVehiclesRoute() {
  return (
    <main className="bay-step">
      <title>My vehicles · Bayledger bay</title>
      <h1>My vehicles</h1>
    </main>
  )
}
