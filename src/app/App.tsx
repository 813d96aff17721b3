/** Lays out the app. */
export function App() {
  return (
    <main>
      <h1>Dry Run</h1>
    </main>
  )
}
